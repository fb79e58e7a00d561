using System.Globalization;
using System.Reflection;
using System.Text;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Benchmarks.Projects;

/// <summary>One rig of so many nodes, in a shape whose cost might grow faster than the rig.</summary>
internal sealed class SizedRig
{
    private const int NodesInAPart = 5;
    private const int NodesInAPairOfLimbs = 32;

    private static readonly Dictionary<string, Func<int, string>> Sources = new()
    {
        ["many parts"] = ManyParts,
        ["a long chain"] = LongChain,
        ["limbs on both sides"] = Limbs,
        ["a slip in each part"] = Slips,
        ["written out"] = WrittenOut,
    };

    private SizedRig(string source) => Compilation = CompiledCode.Compile(("/harbour/Sized.cs", source));

    public static IEnumerable<string> Shapes => Sources.Keys;

    public CSharpCompilation Compilation { get; }

    public static SizedRig Of(string shape, int nodes) => new(Sources[shape](nodes));

    /// <summary>The rig to be run instead of read.</summary>
    public IRigDefinition Load()
    {
        Assembly assembly = CompiledCode.Load(Compilation);
        return (IRigDefinition)Activator.CreateInstance(assembly.GetType("Sized")!)!;
    }

    private static string ManyParts(int nodes) => Rig(
        $$"""
                for (var part = 0; part < {{nodes / NodesInAPart}}; part++)
                {
                    var holder = rig.Group($"part_{part}_group").Under(world).PlacedAt(root);
                    var joint = root.Child($"joint_{part}", at: new Vector3(0, 0, 0.1f * part));
                    var pull = rig.Control($"pull_{part}").Under(holder).PlacedAt(joint);
                    var swing = rig.Control($"swing_{part}").Under(holder).PlacedAt(joint).LimitTurn(Axis.X, -30f, 30f);
                    var calm = pull.Switch("calm").AlsoOn(swing);
                    rig.Blend(joint).From(pull, calm.Inverse).From(swing, calm);
                    var tip = joint.Child($"tip_{part}");
                    rig.Drive(tip).ByChannels(swing);
                    rig.Label($"label_{part}", "calm").Under(pull).ShownBy(calm);
                }
        """);

    private static string Limbs(int nodes) => Rig(
        $$"""
                for (var pair = 0; pair < Math.Max(1, {{nodes / NodesInAPairOfLimbs}}); pair++)
                {
                    foreach (var side in Side.Both)
                    {
                        var hip = root.Child($"hip_{pair}_{side}", at: new Vector3(0.2f * side.Sign, 0, 0.3f * pair));
                        var knee = hip.Child($"knee_{pair}_{side}", at: new Vector3(0, -0.4f, 0.02f));
                        var leg = rig.Chain(hip, knee.Child($"ankle_{pair}_{side}", at: new Vector3(0, -0.4f, -0.02f)));
                        var parts = rig.Group($"leg_{pair}_{side}_group").PlacedAt(root);
                        rig.Drive(parts).ByMatrix(world);
                        var ik = leg.Copy("ik").Under(parts);
                        var foot = rig.Control($"foot_{pair}_{side}").Under(world).PlacedAt(leg.Tip);
                        rig.TwoBone(ik).Reach(foot).Face(rig.Control($"pole_{pair}_{side}").Under(world).PlacedAt(ik.PolePoint(0.4f)));
                        var fk = leg.Copy("fk").Under(parts);
                        var above = world;
                        foreach (var joint in leg)
                        {
                            var turn = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
                            rig.Drive(fk.Of(joint)).ByChannels(turn);
                            above = turn;
                        }

                        var amount = foot.Switch("fk");
                        rig.Blend(leg).From(ik, amount.Inverse).From(fk, amount);
                        rig.Label($"ik_{pair}_{side}", "IK").Under(foot).ShownBy(amount.Inverse);
                    }
                }
        """);

    private static string Slips(int nodes) => Rig(
        $$"""
                for (var part = 0; part < {{nodes / NodesInAPart}}; part++)
                {
                    var holder = rig.Group($"part_{part}").Under(world);
                    var joint = root.Child($"joint_{part}");
                    var pull = rig.Control($"pull_{part}").Under(holder).Accept("CDY2001", "only to be slow");
                    var swing = rig.Control($"swing_{part}").Under(holder);
                    var calm = pull.Switch("calm");
                    rig.Blend(joint).From(pull, calm).From(swing, calm);
                    var tip = joint.Child($"tip_{part}");
                    rig.Drive(tip).ByMatrix(swing);
                }
        """);

    private static string LongChain(int nodes) => Rig(
        $$"""
                var joint = root;
                var joints = new List<Joint>();
                for (var link = 0; link < {{nodes / NodesInAPart}}; link++)
                {
                    joint = joint.Child($"link_{link}", link % 2 == 0 ? JointRole.Deform : JointRole.Twist, at: new Vector3(0, 0.1f, 0));
                    joints.Add(joint);
                }

                var rope = rig.Chain(joints[0], joints[^1]);
                var free = rope.Copy("free").Under(world);
                var held = rope.Copy("held").Under(world);
                var above = world;
                foreach (var link in rope)
                {
                    var turn = rig.Control($"turn_{link.Name}").Under(above).PlacedAt(link);
                    rig.Drive(free.Of(link)).ByChannels(turn);
                    above = turn;
                }

                for (var link = 0; link < rope.Count; link++)
                    rig.Drive(held.Of(rope[link])).ByChannels(rig.Control($"hold_{link}").Under(world));
                var slack = above.Switch("slack");
                rig.Blend(rope.Without(JointRole.Twist)).From(rope.Without(JointRole.Twist).Copy("rest"), slack).From(rope.Without(JointRole.Twist).Copy("other"), slack.Inverse);
        """);

    private static string WrittenOut(int nodes)
    {
        var code = new StringBuilder();
        for (var part = 0; part < nodes / NodesInAPart; part++)
        {
            code.Append(CultureInfo.InvariantCulture, $$"""
                        var holder{{part}} = rig.Group("part_{{part}}_group").Under(world).PlacedAt(root);
                        var joint{{part}} = root.Child("joint_{{part}}");
                        var pull{{part}} = rig.Control("pull_{{part}}").Under(holder{{part}}).PlacedAt(joint{{part}});
                        var swing{{part}} = rig.Control("swing_{{part}}").Under(holder{{part}}).PlacedAt(joint{{part}});
                        var calm{{part}} = pull{{part}}.Switch("calm");
                        rig.Blend(joint{{part}}).From(pull{{part}}, calm{{part}}.Inverse).From(swing{{part}}, calm{{part}});
                        rig.Drive(joint{{part}}.Child("tip_{{part}}")).ByChannels(swing{{part}});

                """);
        }

        return Rig(code.ToString());
    }

    private static string Rig(string body) =>
        $$"""
        using System;
        using System.Collections.Generic;
        using System.Numerics;
        using Condyle;

        public sealed class Sized : IRigDefinition
        {
            public void Define(RigDraft rig)
            {
                var root = rig.Skeleton("sized").Root("root");
                var world = rig.Control("world");
        {{body}}
            }
        }

        """;
}
