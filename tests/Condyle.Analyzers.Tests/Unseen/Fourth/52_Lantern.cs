using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R52;

/// <summary>A lantern that hangs from a hook, stands on the quay or is carried: three places, one at a time.</summary>
public sealed class Lantern : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var ring = rig.Skeleton("lantern").Root("ring", at: new Vector3(0f, 2f, 0f));
        var glass = ring.Child("glass", at: new Vector3(0f, -0.2f, 0f));

        var world = rig.Control("world");
        var hook = rig.Control("hook").Under(world).PlacedAt(ring);
        var quay = rig.Control("quay").Under(world).PlacedAt(ring);
        var hand = rig.Control("carrier").Under(world).PlacedAt(ring);

        var carried = hand.Switch("carried").AlsoOn(hook).AlsoOn(quay);
        var standing = quay.Switch("standing").AlsoOn(hook);

        Weight free = carried.Inverse;
        rig.Blend(ring)
            .From(hand, carried)
            .From(quay, free * standing)
            .From(hook, free * standing.Inverse);

        var swing = rig.Control("swing").Under(ring).PlacedAt(glass).LimitTurn(Axis.Z, -45f, 45f);
        rig.Drive(glass).ByChannels(swing);

        var holder = rig.Group("glow").Under(ring).PlacedAt(glass).Accept("CDY1001", "the light artist looks for this name");
        rig.Label("carried_label", "CARRIED").Under(holder).ShownBy(carried);
        rig.Label("standing_label", "STANDING").Under(holder).ShownBy(free * standing);
    }
}
