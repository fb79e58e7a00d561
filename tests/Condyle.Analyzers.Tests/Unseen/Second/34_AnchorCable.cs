using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R34;

/// <summary>An anchor with its cable: every link turns a quarter against the one before it, and every fifth has a handle.</summary>
public sealed class AnchorCable : IRigDefinition
{
    private const int Links = 22;
    private const int Every = 5;

    public void Define(RigDraft rig)
    {
        var hawse = rig.Skeleton("anchor_cable").Root("hawse", JointRole.Helper, at: new Vector3(0, 6, 0));
        var ship = rig.Control("ship").PlacedAt(hawse);
        rig.Drive(hawse).ByChannels(ship);

        var cable = new Cable(hawse, Links, pitch: 0.28f);
        using var stretch = Every.CountUp().GetEnumerator();
        var above = (Node)ship;
        var number = 0;
        foreach (var piece in cable.Chunk(Every))
        {
            stretch.MoveNext();
            var (first, rest) = (piece[0], piece.Skip(1));
            var handle = rig.Control($"cable_{++number:00}").Under(above).PlacedAt(first).LimitMove(Axis.Y, -stretch.Current * 0.1f, 0);
            rig.Drive(first).ByChannels(handle);
            Node last = handle;
            foreach (var link in rest)
            {
                var follower = rig.Group($"{link}_group").Under(last).PlacedAt(link);
                rig.Drive(link).ByChannels(follower);
                last = follower;
            }

            above = last;
        }

        Anchor(rig, cable.Last(), above);
    }

    private static void Anchor(RigDraft rig, Joint last, Node above)
    {
        var shank = last.Child("shank", at: new Vector3(0, -1.6f, 0));
        var anchor = rig.Control("anchor").Under(above).PlacedAt(shank);
        rig.Drive(shank).ByChannels(anchor);

        foreach (var (side, degrees) in Flukes())
        {
            var fluke = shank.Child($"fluke_{side}", at: new Vector3(0.5f * side.Sign, -0.1f, 0));
            var control = rig.Control($"turn_fluke_{side}").Under(anchor).PlacedAt(fluke).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
            rig.Drive(fluke).ByChannels(control.LimitTurn(Axis.X, -degrees, degrees));
        }

        static IEnumerable<(Side Side, float Degrees)> Flukes()
        {
            yield return (Side.Left, 42);
            yield return (Side.Left.Opposite, 40);
        }
    }

    private sealed class Cable(Joint from, int count, float pitch) : IEnumerable<Joint>
    {
        private readonly List<Joint> links = [];

        public IEnumerator<Joint> GetEnumerator()
        {
            // Links are declared when they are first asked for; asking again gives the same ones.
            for (var i = 0; i < count; i++)
            {
                if (i == links.Count)
                    links.Add(Declare(i));
                yield return links[i];
            }
        }

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

        private Joint Declare(int index)
        {
            var quarter = Quaternion.CreateFromAxisAngle(Vector3.UnitY, index % 2 == 1 ? MathF.PI / 2 : -MathF.PI / 2);
            return index == 0
                ? from.Child("link_00", at: new Vector3(0, -pitch, 0))
                : links[index - 1].Child($"link_{index:00}", at: new Vector3(0, -pitch, 0), turned: quarter);
        }
    }
}

internal static class Counting
{
    public static IEnumerable<int> CountUp(this int start)
    {
        while (true)
        {
            yield return start;
            if (start++ >= 100)
                yield break;
        }
    }
}
