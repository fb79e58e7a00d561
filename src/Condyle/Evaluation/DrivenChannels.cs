using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What a drive by channels writes.</summary>
/// <param name="Written">The channels that it has: all of them, unless it was told which.</param>
/// <param name="Scales">Whether scale comes from the source; else it is as at rest.</param>
internal readonly record struct DrivenChannels(Channels Written, bool Scales)
{
    /// <exception cref="RigGeometryException">Something isn't known, or the drive is by matrix and told which channels to write.</exception>
    public static DrivenChannels Of(RigDrive drive)
    {
        var scales = Facts.Known(drive.WritesScale, $"Whether {drive.Title} writes scale");
        if (Facts.Known(drive.Writes, $"Which channels {drive.Title} writes") is not { } only)
            return new(Channels.All, scales);
        if (drive.Sources.Exists(source => source.Way == DriveWay.Matrix))
            throw new RigGeometryException($"{drive.Title} is by matrix, which writes no channels, and is told to write {only}. Drive it by channels, or take .Writing(...) out.", drive);
        return new(scales ? only | Channels.Scale : only, scales || (only & Channels.Scale) != Channels.None);
    }
}
