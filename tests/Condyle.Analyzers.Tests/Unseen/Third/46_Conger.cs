using System.Numerics;
using Condyle;

namespace Unseen.Third.R46;

// Ported from the old pipeline's script. It works; leave it.
public sealed class Conger : IRigDefinition
{
    private const int N = 24;
    private const int Coarse = 4;

    public void Define(RigDraft rig)
    {
        var j = new Joint[N];
        var coarse = new Control[N / Coarse];
        int i = 0, k = 0;
        var skeleton = rig.Skeleton("conger");

    next_joint:
        if (i == 0)
        {
            j[0] = skeleton.Root("eel_0", at: new Vector3(0f, 0.1f, 0f));
            goto made;
        }

        j[i] = j[i - 1].Child("eel_" + i, at: new Vector3((i & 1) == 0 ? 0.01f : -0.01f, 0f, -0.08f));

    made:
        if (++i < N)
            goto next_joint;

        var world = rig.Control("world");
        i = 0;

    next_control:
        Control c;
        switch (i % Coarse)
        {
            case 0:
                c = rig.Control("bend_" + i).PlacedAt(j[i]);
                if (k == 0)
                    goto under_world;
                c.Under(coarse[k - 1]);
                goto keep;

            under_world:
                c.Under(world);

            keep:
                coarse[k++] = c;
                goto drive;

            case 1:
            case 3:
                c = rig.Control("fine_" + i).Under(coarse[k - 1]).PlacedAt(j[i]).Lock(Channels.TurnZ);
                goto drive;

            default:
                c = rig.Control("wave_" + i).Under(coarse[k - 1]).PlacedAt(j[i]);
                goto drive;
        }

    drive:
        rig.Drive(j[i]).ByChannels(c);
        i++;
        if (i < N)
            goto next_control;

        // fins, jaw
        var fin = 0;
    fins:
        var side = fin == 0 ? Side.Left : Side.Right;
        var f = j[2].Child($"fin_{side}", at: new Vector3(0.05f * side.Sign, 0f, 0f));
        var fc = rig.Control($"flick_{side}").Under(coarse[0]).PlacedAt(f);
        rig.Drive(f).ByChannels(fc);
        if (fin++ == 0)
            goto fins;

        var jaw = j[0].Child("jaw", at: new Vector3(0f, -0.02f, 0.05f));
        var bite = rig.Control("bite").Under(coarse[0]).PlacedAt(jaw).LimitTurn(Axis.X, 0f, 60f);
        rig.Drive(jaw).ByChannels(bite);

        // dorsal fin follows by group, three at a time
        for (i = 3; i < N; i++)
        {
            for (k = 0; k < 3; k++)
            {
                if (i + k >= N - 1)
                    goto enough;
                var d = j[i + k].Child("dorsal_" + (i + k), at: new Vector3(0f, 0.05f, 0f));
                var g = rig.Group("dorsal_" + (i + k) + "_group").Under(coarse[(i + k) / Coarse]).PlacedAt(d);
                rig.Drive(d).ByChannels(g);
            }

            i += 5;
        }

    enough:
        rig.Label("conger_label", "CONGER").Under(coarse[0]);
    }
}
