using System.Globalization;

namespace Condyle.Runtime.Baking;

/// <summary>A loop must end where it begins, within the rounding that a bake may have.</summary>
internal sealed class LoopEnds(CompiledRig rig)
{
    private readonly Place[] first = new Place[rig.Joints.Count];

    public void Begin(LiveMoment moment)
    {
        for (var joint = 0; joint < first.Length; joint++)
            first[joint] = moment.Place(joint);
    }

    /// <exception cref="BadInputException">A joint ends elsewhere.</exception>
    public void End(LiveMoment moment, Clip clip)
    {
        var reach = first.Max(place => place.Origin.Length);
        var (worst, at) = (default(Off), -1);
        for (var joint = 0; joint < first.Length; joint++)
        {
            var off = Off.Between(moment.Place(joint), first[joint]);
            if ((off.Metres > BakeProof.AllowedMetres(reach) || off.Degrees > BakeProof.AllowedDegrees) && (at < 0 || off.Metres > worst.Metres))
                (worst, at) = (off, joint);
        }

        if (at >= 0)
        {
            throw clip.Wrong(
                string.Create(CultureInfo.InvariantCulture, $"doesn't end where it begins, so it can't loop: the joint is {worst.Metres * 1000:0.###} mm and {worst.Degrees:0.####}° away"),
                "Key the same pose at both ends, take the way off with root motion in place, or bake it without loop",
                rig.Joints[at].Name);
        }
    }
}
