using Condyle.Runtime.Baking;

namespace Condyle.Runtime;

/// <summary>How a rig at rest compares with the skeleton as delivered: controls at zero, switches at their defaults.</summary>
/// <param name="Largest">The largest deviation of an exported joint, in the world.</param>
/// <param name="Moved">
/// The exported joints that leave their rest by more than rounding: by 0.1 mm or 0.01°, and by 1 mm and 0.1° more for every kilometre that the rig reaches from the origin.
/// </param>
public sealed record RestReport(Deviation Largest, IReadOnlyList<string> Moved)
{
    private const double Millimetre = 1e-3, SameMetres = 0.1 * Millimetre, SameDegrees = 0.01, MetresAMetre = 1e-6, DegreesAMetre = 1e-4;

    internal static RestReport Of(CompiledRig rig, IReadOnlyList<JointRest> rest)
    {
        var live = rig.NewInstance();
        live.Evaluate();
        var comparison = new Comparison(rig);
        var delivered = new Playback(rig, rest, [], [0]).At(0, 0);
        var reach = 0.0;
        foreach (var joint in rig.Joints)
        {
            var place = live.Place(joint.Index);
            reach = Math.Max(reach, place.Origin.Length);
            comparison.Take(joint.Index, Off.Between(place, delivered[joint.Index]), 0);
        }

        var (metres, degrees) = (SameMetres + (MetresAMetre * reach), SameDegrees + (DegreesAMetre * reach));
        return new RestReport(comparison.Largest, [.. rig.Joints
            .Where(joint => comparison.Of(joint.Index) is var off && (off.Metres.Value > metres || off.Degrees.Value > degrees))
            .Select(joint => joint.Name)]);
    }
}
