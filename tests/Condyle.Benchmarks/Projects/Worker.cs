using System.Globalization;

namespace Condyle.Benchmarks.Projects;

/// <summary>One rig file of a generated project: a dock worker, three limbs on each side, fingers in nested loops, helpers, interpolated names. Clean.</summary>
internal static class Worker
{
    /// <summary>What stands in a body of the rig once, a digit last: behind it another one is typed.</summary>
    public const string Edited = "distance: 0.4";

    public static (string Path, string Source) File(int number)
    {
        var name = "Worker" + number.ToString("0000", CultureInfo.InvariantCulture);
        return ($"/harbour/Workers/{name}.cs", Template.Replace("WorkerName", name, StringComparison.Ordinal));
    }

    private const string Template =
        """
        using System.Collections.Generic;
        using System.Linq;
        using System.Numerics;
        using Condyle;
        using Harbour.Shared;

        namespace Harbour.Workers;

        /// <summary>A dock worker with a lifting boom at each shoulder.</summary>
        public sealed class WorkerName : IRigDefinition
        {
            private const string Part = "WorkerName";
            private const int Bones = 3;
            private static readonly string[] Fingers = ["thumb", "index", "middle", "ring", "little"];

            private sealed record Limb(string Name, float Height, float Width, float Upper, float Lower, params string[] Joints);

            private static readonly IReadOnlyList<Limb> Limbs =
            [
                new("arm", 0.45f, 0.18f, 0.3f, 0.26f, "shoulder", "elbow", "wrist"),
                new("leg", -0.05f, 0.1f, 0.42f, 0.4f, "hip", "knee", "ankle"),
                new("boom", 0.6f, 0.25f, 0.5f, 0.6f, "mast", "jib", "hook"),
            ];

            public void Define(RigDraft rig)
            {
                var pelvis = rig.Skeleton(Part).Root("pelvis", at: new Vector3(0, 1, 0));
                var systems = rig.Group("systems_group");
                var world = rig.Control("world");
                var offset = rig.Control($"{Part}_offset").Under(world).PlacedAt(pelvis);
                rig.Drive(pelvis).ByChannels(offset);

                foreach (var side in Side.Both)
                {
                    foreach (var limb in Limbs)
                    {
                        var tip = Build(rig, limb, side, pelvis, systems, offset);
                        if (limb.Name == "arm")
                            Hand(rig, tip, side, offset);
                        else if (limb.Joints.Contains("ankle"))
                            Gear.Boot(rig, tip, offset, side);
                    }
                }

                Gear.Belt(rig, pelvis, offset, pouches: 4);
            }

            private static Joint Build(RigDraft rig, Limb limb, Side side, Joint pelvis, Group systems, Control offset)
            {
                var upper = pelvis.Child($"{limb.Joints[0]}_{side}", at: new Vector3(limb.Width * side.Sign, limb.Height, 0));
                var twist = upper.Child($"{limb.Joints[0]}_twist_{side}", JointRole.Twist, at: Along(side, limb.Upper / 2));
                var middle = twist.Child($"{limb.Joints[1]}_{side}", at: Along(side, limb.Upper / 2) + new Vector3(0, 0, -0.02f));
                var tip = middle.Child($"{limb.Joints[2]}_{side}", at: Along(side, limb.Lower) + new Vector3(0, 0, 0.02f));
                var chain = rig.Chain(upper, tip).Without(JointRole.Twist);

                var root = rig.Control($"{limb.Name}_root_{side}").Under(offset).PlacedAt(chain.Root);
                var parts = rig.Group($"{limb.Name}_{side}_group").Under(systems).PlacedAt(root);
                rig.Drive(parts).ByMatrix(root);

                var ik = chain.Copy("ik").Under(parts);
                var goal = rig.Control($"{limb.Joints[2]}_goal_{side}").Under(offset).PlacedAt(chain.Tip);
                var pole = rig.Control($"{limb.Joints[1]}_pole_{side}").Under(offset).PlacedAt(ik.PolePoint(distance: 0.4f));
                rig.TwoBone(ik).Reach(goal).Face(pole);

                var fk = chain.Copy("fk").Under(parts);
                var above = root;
                foreach (var joint in chain)
                {
                    var turn = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
                    rig.Drive(fk.Of(joint)).ByChannels(turn);
                    turn.Lock(Channels.Move).LimitTurn(Axis.X, -90f, 90f);
                    above = turn;
                }

                var amount = goal.Switch("fk").AlsoOn(root);
                rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
                rig.Label($"ik_{limb.Name}_label_{side}", "IK").Under(goal).ShownBy(amount.Inverse);
                rig.Label($"fk_{limb.Name}_label_{side}", "FK").Under(goal).ShownBy(amount);
                return tip;
            }

            private static void Hand(RigDraft rig, Joint wrist, Side side, Control offset)
            {
                var holder = rig.Group($"hand_{side}_group").Under(offset).PlacedAt(wrist);
                rig.Drive(holder).ByMatrix(wrist);
                for (var finger = 0; finger < Fingers.Length; finger++)
                {
                    var spread = 0.02f * (finger - 2);
                    var joint = wrist;
                    Node above = holder;
                    for (var bone = 1; bone <= Bones; bone++)
                    {
                        joint = joint.Child($"{Fingers[finger]}_{bone}_{side}", at: Along(side, 0.03f) + new Vector3(0, 0, bone == 1 ? spread : 0));
                        var curl = rig.Control(NameOf(finger, bone, side)).Under(above).PlacedAt(joint);
                        rig.Drive(joint).ByChannels(curl);
                        above = curl;
                    }
                }
            }

            private static string NameOf(int finger, int bone, Side side) => "curl_" + Fingers[finger] + $"_{bone}_{side}";

            private static Vector3 Along(Side side, float length) => new(length * side.Sign, 0, 0);
        }

        """;
}
