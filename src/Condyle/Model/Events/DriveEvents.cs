namespace Condyle.Model;

internal sealed class DriveBegun(PlaceId place, int target) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Drive), new Saying.Element(target));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigDrive(id, this, fold.Find<RigNode>(target)));
}

internal sealed class DriveSourced(PlaceId place, int drive, DriveWay way, int source) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(drive, way == DriveWay.Matrix ? nameof(Drive.ByMatrix) : nameof(Drive.ByChannels), new Saying.Element(source));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigDrive>(drive) is { } found)
            found.Sources.Add(new DriveSource(id, Place, way, fold.Find<RigNode>(source), fold.IsCertain(this, found)));
    }
}

internal sealed class DriveOffsetKept(PlaceId place, int drive) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(drive, nameof(Drive.KeepingOffset));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigDrive>(drive) is not { } found)
            return;
        found.KeepsOffset = fold.IsCertain(this, found) ? true : Fact<bool>.Open;
        found.Kept = new OffsetKept(id, Place);
    }
}

internal sealed class DriveScaled(PlaceId place, int drive) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(drive, nameof(Drive.WithScale));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigDrive>(drive) is not { } found)
            return;
        found.WritesScale = fold.IsCertain(this, found) ? true : Fact<bool>.Open;
        found.Scaled = (id, Place);
    }
}

internal sealed class DriveChannelsSet(PlaceId place, int drive, Fact<Channels> channels) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(drive, nameof(Drive.Writing), channels);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigDrive>(drive) is { } found)
            found.Writes = fold.IsCertain(this, found) && channels.TryKnown(out var known) ? known : Fact<Channels?>.Open;
    }
}

internal sealed class BlendBegun(PlaceId place, int target) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Blend), new Saying.Element(target));

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigBlend(id, this, fold.Find<RigChain>(target), fold.Find<RigNode>(target)));
}

internal sealed class BlendSourced(PlaceId place, int blend, int source, Fact<WeightPolynomial> weight) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(blend, nameof(NodeBlend.From), new Saying.Element(source), weight);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigBlend>(blend) is not { } found)
            return;
        found.Sources.Add(new BlendSource(id, Place, fold.Find<RigCopy>(source), fold.Find<RigNode>(source), weight));
        found.SourcesAreOpen |= !fold.IsCertain(this, found);
    }
}
