using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R36;

/// <summary>
/// A hermit crab in a whelk's shell. The shell is a conical helix over the logarithmic spiral z(θ) = z₀·exp((b + i)θ);
/// the legs stand at roots of unity, and their joint limits shrink with a polynomial in the leg's index.
/// </summary>
public sealed class HermitCrab : IRigDefinition
{
    private static readonly double Phi = (1 + Math.Sqrt(5)) / 2;
    private static readonly double B = -2 * Math.Log(Phi) / Math.PI;     // a golden spiral shrinks by φ every quarter turn
    private static readonly double[] KneeLimit = [70, -12.5, 1.25];      // degrees; ascending powers

    public void Define(RigDraft rig)
    {
        var thorax = rig.Skeleton("hermit_crab").Root("thorax", at: new Vector3(0, 0.06f, 0));
        var body = rig.Control("crab").PlacedAt(thorax);
        var systems = rig.Group("systems_group");
        rig.Drive(thorax).ByChannels(body);

        Shell(rig, thorax, body);
        foreach (var (side, k) in from k in Enumerable.Range(1, 3) from side in Side.Both select (side, k))
            Leg(rig, thorax, body, side, k);
        foreach (var side in Side.Both)
            Claw(rig, thorax, body, systems, side);
    }

    private static void Shell(RigDraft rig, Joint thorax, Control body)
    {
        var mouth = thorax.Child("shell_0", JointRole.Helper, at: new Vector3(0, 0.03f, -0.03f));
        var retreat = rig.Control("shell").Under(body).PlacedAt(mouth).LimitMove(Axis.Z, -0.01f, 0.02f);
        rig.Drive(mouth).ByChannels(retreat);

        var z0 = new Complex(0.035, 0);
        Vector3 Point(double theta)
        {
            var z = z0 * Complex.Exp(new Complex(B, 1) * theta);
            return new Vector3((float)z.Imaginary, (float)(0.6 * (z0.Magnitude - z.Magnitude)), (float)(z.Real - z0.Real));
        }

        var whorl = mouth;
        var previous = Vector3.Zero;
        foreach (var (n, theta) in Angles(Math.PI / 3, theta => z0.Magnitude * Math.Exp(B * theta) > 0.008).Select((theta, n) => (n + 1, theta)))
        {
            var point = Point(theta);
            whorl = whorl.Child($"shell_{n}", JointRole.Helper, at: point - previous);
            previous = point;
        }
    }

    private static IEnumerable<double> Angles(double step, Predicate<double> inside)
    {
        for (var theta = step; inside(theta); theta += step)
            yield return theta;
    }

    private static void Leg(RigDraft rig, Joint thorax, Control body, Side side, int k)
    {
        // The k-th of twelve roots of unity, counted from the character's front; the right side takes the conjugates.
        var root = Complex.FromPolarCoordinates(1, 2 * Math.PI * k / 12);
        var outwards = side == Side.Left ? root : Complex.Conjugate(root);
        var direction = new Vector3((float)outwards.Imaginary, 0, (float)outwards.Real);
        var turned = Quaternion.CreateFromAxisAngle(Vector3.UnitY, (float)outwards.Phase);

        var coxa = thorax.Child($"coxa_{k}_{side}", at: 0.03f * direction, turned: turned);
        var knee = coxa.Child($"knee_{k}_{side}", at: Polar(0.05, Math.PI / 5));
        var foot = knee.Child($"foot_{k}_{side}", at: Polar(0.08, -Math.PI / 3));

        var hip = rig.Control($"turn_{coxa}").Under(body).PlacedAt(coxa).Lock(Channels.Move);
        var limit = (float)Horner(KneeLimit, k);
        var bend = rig.Control($"turn_{knee}").Under(hip).PlacedAt(knee)
            .Lock(Channels.Move | Channels.TurnY | Channels.TurnZ).LimitTurn(Axis.X, -limit, limit / (float)Phi);
        var tip = rig.Control($"turn_{foot}").Under(bend).PlacedAt(foot).Lock(Channels.Move);
        foreach (var (joint, control) in new[] { coxa, knee, foot }.Zip([hip, bend, tip]))
            rig.Drive(joint).ByChannels(control);
    }

    private static Vector3 Polar(double r, double phi) => new(0, (float)(r * Math.Sin(phi)), (float)(r * Math.Cos(phi)));

    private static double Horner(IReadOnlyList<double> ascending, double x) => ascending.Reverse().Aggregate((sum, coefficient) => (sum * x) + coefficient);

    private static void Claw(RigDraft rig, Joint thorax, Control body, Group systems, Side side)
    {
        // The left claw is the larger one by φ, as in most of the family.
        var size = side == Side.Left ? 0.03f * (float)Phi : 0.03f;
        var arm = thorax.Child($"claw_root_{side}", at: new Vector3(0.015f * side.Sign, 0, 0.03f));
        var elbow = arm.Child($"claw_elbow_{side}", at: size * Vector3.Normalize(new Vector3(side.Sign, 0.4f, 1)));
        var wrist = elbow.Child($"claw_wrist_{side}", at: size * Vector3.Normalize(new Vector3(-0.6f * side.Sign, -0.2f, 1)));
        var finger = wrist.Child($"pincer_{side}", at: size / 2 * Vector3.UnitZ);

        var chain = rig.Chain(arm, wrist);
        var parts = rig.Group($"claw_{side}_group").Under(systems).PlacedAt(body);
        rig.Drive(parts).ByMatrix(body);
        var reach = chain.Copy("reach").Under(parts);
        var goal = rig.Control($"claw_{side}").Under(body).PlacedAt(wrist);
        var pole = rig.Control($"claw_pole_{side}").Under(body).PlacedAt(chain.Bending(side.Sign * Vector3.UnitX).PolePoint(2 * size));
        rig.TwoBone(reach).Reach(goal).Face(pole);
        for (var i = 0; i < chain.Count; i++)
            rig.Drive(chain[i]).ByChannels(reach.Of(chain[i]));

        var pinch = rig.Control($"pinch_{side}").Under(goal).PlacedAt(finger).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ);
        var (open, shut) = (Math.Acos(1 / Phi) * 180 / Math.PI, Math.Round(100 / Math.Pow(Phi, 6), 2));
        rig.Drive(finger).ByChannels(side.Sign > 0 ? pinch.LimitTurn(Axis.Y, (float)-shut, (float)open) : pinch.LimitTurn(Axis.Y, (float)-open, (float)shut));
    }
}
