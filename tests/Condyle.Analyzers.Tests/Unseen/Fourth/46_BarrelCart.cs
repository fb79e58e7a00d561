using System.Text;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R46;

public class BarrelCart : IRigDefinition
{
    private readonly StringBuilder text = new StringBuilder();

    public void Define(RigDraft rig)
    {
        Joint cart = rig.Skeleton(Name("barrel", "cart")).Root(Name("cart"), at: new Vector3(0, 0.5f, 0));
        Control world = rig.Control(Name("world"));
        Control push = rig.Control(Name("push")).Under(world).PlacedAt(cart).Lock(Channels.MoveY);
        rig.Drive(cart).ByChannels(push);

        Group barrels = rig.Group(Name("barrels", "group")).Under(push);

        for (int row = 0; row < 2; row++)
        {
            for (int column = 0; column < 3; column++)
            {
                Joint barrel = cart.Child(Name("barrel", Letter(row), column.ToString()), at: new Vector3(-0.6f + row * 0.6f, 0.4f, -0.7f + column * 0.7f));
                Control roll = rig.Control(Name("roll", barrel.Name)).Under(barrels).PlacedAt(barrel);
                Control fall = rig.Control(Name("fall", barrel.Name)).Under(world).PlacedAt(barrel);
                Switch loose = roll.Switch("loose");
                rig.Blend(barrel).From(roll, loose.Inverse).From(fall, loose);
                rig.Label(Name("loose", "label", Letter(row), column.ToString()), Shout("loose", column)).Under(fall).ShownBy(loose);
            }
        }

        foreach (Side side in Side.Both)
        {
            Joint wheel = cart.Child(Name("wheel", side.ToString()), at: new Vector3(0.7f * side.Sign, -0.2f, 0));
            Control spin = rig.Control(Name("spin", "wheel", side.ToString())).Under(push).PlacedAt(wheel);
            spin.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            rig.Drive(wheel).ByChannels(spin);
        }

        Joint shaft = cart.Child(Name("shaft"), at: new Vector3(0, 0, 1.1f));
        Group shaftParts = rig.Group(Name("shaft", "parts")).Under(push).PlacedAt(shaft);
        rig.Drive(shaftParts).ByMatrix(shaft);
        rig.Drive(shaft).ByChannels(rig.Control(Name("lift", "shaft")).Under(push).PlacedAt(shaft).LimitTurn(Axis.X, -40, 10));
    }

    private string Name(params string[] words)
    {
        text.Clear();
        foreach (string word in words)
        {
            if (text.Length > 0)
            {
                text.Append('_');
            }
            text.Append(word.ToLowerInvariant());
        }
        return text.ToString();
    }

    private string Letter(int number)
    {
        return new StringBuilder(1).Append((char)('A' + number)).ToString();
    }

    private string Shout(string word, int number)
    {
        text.Length = 0;
        text.Append(word.ToUpperInvariant()).Append(' ').Append(number + 1).Replace("LOOSE", "OFF").Insert(0, "> ");
        return text.ToString();
    }
}
