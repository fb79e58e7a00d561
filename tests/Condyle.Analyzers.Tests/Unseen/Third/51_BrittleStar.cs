using System;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R51;

/// <summary>
/// Found under the slipway. The arms taper geometrically, so how many vertebrae one has follows from its length,
/// from the first vertebra and from the taper: a sum of a geometric series, solved for n.
/// </summary>
public sealed class BrittleStar : IRigDefinition
{
    private const float DiscRadius = 0.012f;
    private const float ArmLength = 0.11f;
    private const float FirstVertebra = 0.012f;
    private const float Taper = 0.93f;

    private static readonly int Arms = (int)Math.Round(360.0 / 72.0);

    // L = a (1 - r^n) / (1 - r)  =>  n = ln(1 - L (1 - r) / a) / ln r
    private static readonly int Vertebrae = (int)Math.Ceiling(Math.Log(1 - (ArmLength * (1 - Taper) / FirstVertebra)) / Math.Log(Taper));

    // A handle where the arm has bent by about a radian.
    private static readonly int HandleEvery = Math.Max(2, Vertebrae / 4);

    public void Define(RigDraft rig)
    {
        var disc = rig.Skeleton("brittle_star").Root("disc", at: new Vector3(0f, 0.008f, 0f));
        var world = rig.Control("world");
        var body = rig.Control("disc_move").Under(world).PlacedAt(disc);
        rig.Drive(disc).ByChannels(body);

        for (var arm = 0; arm < Arms; arm++)
        {
            var vertebrae = Declare(disc, arm);
            Handles(rig, vertebrae, body, arm);
            TubeFeet(rig, vertebrae, arm);
        }

        Jaws(rig, disc, body);
    }

    private static Joint[] Declare(Joint disc, int arm)
    {
        var vertebrae = new Joint[Vertebrae];
        var around = Quaternion.CreateFromAxisAngle(Vector3.UnitY, arm * 2f * MathF.PI / Arms);
        vertebrae[0] = disc.Child($"arm_{arm}_0", at: Vector3.Transform(DiscRadius * Vector3.UnitZ, around), turned: around);
        for (var n = 1; n < Vertebrae; n++)
        {
            var length = FirstVertebra * MathF.Pow(Taper, n - 1);
            vertebrae[n] = vertebrae[n - 1].Child($"arm_{arm}_{n}", at: new Vector3(0f, 0f, length));
        }

        return vertebrae;
    }

    private static void Handles(RigDraft rig, Joint[] vertebrae, Control body, int arm)
    {
        var handles = 1 + ((Vertebrae - 1) / HandleEvery);
        var made = new Control[handles];
        for (var h = 0; h < handles; h++)
        {
            var joint = vertebrae[h * HandleEvery];
            made[h] = rig.Control($"coil_{arm}_{h}").Under(h == 0 ? body : made[h - 1]).PlacedAt(joint);
        }

        for (var n = 0; n < Vertebrae; n++)
        {
            var (before, rest) = Math.DivRem(n, HandleEvery);
            if (rest == 0)
            {
                rig.Drive(vertebrae[n]).ByChannels(made[before]);
                continue;
            }

            // Linear between the two nearest handles; the last stretch only has one.
            var near = rig.Group($"near_{arm}_{n}_group").Under(made[before]).PlacedAt(vertebrae[n]);
            if (before + 1 == handles)
            {
                rig.Drive(vertebrae[n]).ByChannels(near);
                continue;
            }

            var far = rig.Group($"far_{arm}_{n}_group").Under(made[before + 1]).PlacedAt(vertebrae[n]);
            var share = (float)rest / HandleEvery;
            rig.Blend(vertebrae[n]).From(near, 1f - share).From(far, share);
        }
    }

    private static void TubeFeet(RigDraft rig, Joint[] vertebrae, int arm)
    {
        // The feet thin out as the Fibonacci numbers grow.
        for (int a = 1, b = 2; a < Vertebrae; (a, b) = (b, a + b))
        {
            foreach (var side in Side.Both)
            {
                var foot = vertebrae[a].Child($"foot_{arm}_{a}_{side}", at: new Vector3(0.003f * side.Sign, -0.004f, 0f));
                var control = rig.Control($"step_{arm}_{a}_{side}").Under(vertebrae[a]).PlacedAt(foot);
                rig.Drive(foot).ByChannels(control);
            }
        }
    }

    private static void Jaws(RigDraft rig, Joint disc, Control body)
    {
        for (var jaw = 0; jaw < Arms; jaw++)
        {
            var angle = (jaw + 0.5f) * 2f * MathF.PI / Arms;
            var joint = disc.Child($"jaw_{jaw}", at: 0.4f * DiscRadius * new Vector3(MathF.Sin(angle), -0.5f, MathF.Cos(angle)));
            var control = rig.Control($"chew_{jaw}").Under(body).PlacedAt(joint).Lock(Channels.Turn);
            rig.Drive(joint).ByChannels(control);
        }
    }
}
