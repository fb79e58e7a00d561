using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R19;

public sealed class CargoNet : IRigDefinition
{
    private int leaves;

    public void Define(RigDraft rig)
    {
        leaves = 0;
        var ring = rig.Skeleton("cargo_net").Root("ring", JointRole.Helper, new Vector3(0, 6, 0));
        var lift = rig.Control("lift").PlacedAt(ring);
        rig.Drive(ring).ByChannels(lift);
        var gather = lift.Switch("gather");
        Branch(rig, ring, lift, lift, gather, "strand", 3, 1.2f);
        if (leaves != Power(3, 3))
            throw new InvalidOperationException($"{leaves} knots");
        rig.Label("gather_label", Repeat("=", Fibonacci(5)) + " GATHERED").ShownBy(gather);
    }

    private void Branch(RigDraft rig, Joint joint, Node loose, Node gathered, Switch by, string name, int depth, float width)
    {
        if (depth == 0)
        {
            leaves++;
            return;
        }

        for (var i = 0; i < 3; i++)
        {
            var turn = Quaternion.CreateFromAxisAngle(Vector3.UnitY, MathF.Tau * i / 3);
            var at = Vector3.Transform(new Vector3(0, -0.8f, width), turn);
            var child = joint.Child($"{name}{i}", at: at);
            var a = rig.Control($"loose_{child.Name}").Under(loose).PlacedAt(child);
            if (depth > 1)
            {
                var b = rig.Control($"gather_{child.Name}").Under(gathered).PlacedAt(child);
                rig.Blend(child).From(a, by.Inverse).From(b, by);
                Branch(rig, child, a, b, by, child.Name, depth - 1, width / 2);
            }
            else
            {
                rig.Drive(child).ByChannels(a);
                Branch(rig, child, a, gathered, by, child.Name, depth - 1, width / 2);
            }
        }
    }

    private static int Power(int of, int to) => to <= 0 ? 1 : of * Power(of, to - 1);

    private static int Fibonacci(int n) => n < 2 ? n : Fibonacci(n - 1) + Fibonacci(n - 2);

    private static string Repeat(string s, int n) => n switch
    {
        0 => "",
        1 => s,
        _ when n % 2 == 0 => Repeat(s + s, n / 2),
        _ => s + Repeat(s, n - 1),
    };
}
