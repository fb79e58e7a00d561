using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R19;

/// <summary>The squid in the tub at the fish market. Each tentacle is posed by hand, swims with the body or clings to the tub.</summary>
public sealed class Squid : IRigDefinition
{
    private const int Tentacles = 6;
    private const int Segments = 5;

    public void Define(RigDraft rig)
    {
        var mantle = rig.Skeleton("squid").Root("mantle");
        var body = rig.Control("body").PlacedAt(mantle);
        rig.Drive(mantle).ByChannels(body);

        var tub = rig.Control("tub");
        var swim = body.Switch("swim", atRest: 1);
        var cling = body.Switch("cling");

        for (var i = 0; i < Tentacles; i++)
        {
            var letter = (char)('a' + i);
            var angle = Quaternion.CreateFromAxisAngle(Vector3.UnitY, float.Pi * 2 * i / Tentacles);
            var first = mantle.Child($"tentacle_{letter}1", at: Vector3.Transform(new Vector3(0, -0.05f, 0.06f), angle), turned: angle);
            var joints = Grow(first, letter, 2).Prepend(first).ToArray();

            var tentacle = rig.Chain(joints.First(), joints.Last());
            var posed = Pose(rig, tentacle, body, "posed");
            var swimming = Pose(rig, tentacle, body, "swim");
            var clinging = Pose(rig, tentacle, tub, "cling");

            rig.Blend(tentacle)
                .From(clinging, cling)
                .From(swimming, swim)
                .From(posed, cling.Inverse * swim.Inverse);
        }

        Fins(rig, mantle, body);

        rig.Label("cling_label", "clings").Under(body).ShownBy(cling);
        rig.Label("swim_label", "swims").Under(body).ShownBy(cling.Inverse * swim);
        rig.Label("posed_label", "by hand").Under(body).ShownBy(cling.Inverse * swim.Inverse);
    }

    /// <summary>The joints below one, by recursion: each a bit shorter than the one above.</summary>
    private static IEnumerable<Joint> Grow(Joint above, char letter, int number)
    {
        if (number > Segments)
            yield break;

        var joint = above.Child($"tentacle_{letter}{number}", at: new Vector3(0, -0.12f + 0.012f * number, 0.01f));
        yield return joint;
        foreach (var further in Grow(joint, letter, number + 1))
            yield return further;
    }

    private static Copy Pose(RigDraft rig, Chain tentacle, Control parent, string tag)
    {
        var copy = tentacle.Copy(tag).Under(parent);
        Curl(rig, tentacle, copy, parent, tag, 0);
        return copy;
    }

    private static void Curl(RigDraft rig, Chain tentacle, Copy copy, Control parent, string tag, int index)
    {
        if (index == tentacle.Count)
            return;

        var joint = tentacle[index];
        var control = rig.Control($"{tag}_{joint}_curl").Under(parent).PlacedAt(joint).Lock(index == 0 ? Channels.None : Channels.Move);
        rig.Drive(copy.Of(joint)).ByChannels(control);
        Curl(rig, tentacle, copy, control, tag, index + 1);
    }

    private static void Fins(RigDraft rig, Joint mantle, Control body)
    {
        foreach (var side in Side.Both)
        {
            var fin = mantle.Child($"fin_{side}", at: new Vector3(0.05f * side.Sign, 0.2f, 0));
            var wave = rig.Control($"wave_fin_{side}").Under(body).PlacedAt(fin).Lock(Channels.Move).LimitTurn(Axis.Z, -60, 60);
            rig.Drive(fin).ByChannels(wave);
        }
    }
}
