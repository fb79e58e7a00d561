namespace Condyle.Model;

/// <summary>Something that a reading knows only by its type: a parameter of code that nobody was seen to call, or what unknown code returned.</summary>
internal sealed class UnknownElement(UnknownKind kind) : RigEvent(PlaceId.None)
{
    public override void Apply(ModelFold fold, int id)
    {
        fold.Model.SpeaksOfUnknown = true;
        switch (kind)
        {
            case UnknownKind.Node or UnknownKind.Group or UnknownKind.Control or UnknownKind.Joint or UnknownKind.CopyJoint:
                fold.Add(RigNode.Unknown(id, this, KindOf(kind)));
                break;
            case UnknownKind.Switch:
                fold.Add(RigSwitch.Unknown(id, this));
                break;
            case UnknownKind.Copy:
                fold.Add(new RigCopy(id, this, new RigChain(id, this, null) { IsUnknown = true }, Text.Open) { IsUnknown = true });
                break;
            case UnknownKind.Chain:
                fold.Add(new RigChain(id, this, null) { IsUnknown = true });
                break;
        }
    }

    private static NodeKind KindOf(UnknownKind kind) => kind switch
    {
        UnknownKind.Group => NodeKind.Group,
        UnknownKind.Control => NodeKind.Control,
        UnknownKind.Joint => NodeKind.Joint,
        UnknownKind.CopyJoint => NodeKind.CopyJoint,
        _ => NodeKind.Any,
    };
}

/// <summary>Unknown code was handed an element and may have said anything about it.</summary>
internal sealed class Touched(PlaceId place, int element) : RigEvent(place)
{
    public int Element => element;

    public override void Apply(ModelFold fold, int id) => fold.Find<RigElement>(element)?.Forget();
}

/// <summary>Code that wasn't read may have said anything about any element made so far.</summary>
internal sealed class AllTouched() : RigEvent(PlaceId.None)
{
    public override void Apply(ModelFold fold, int id) => fold.ForgetAll();
}

/// <summary>A stretch of code that couldn't be read: there may be more to the rig than the model shows.</summary>
internal sealed class Gap(RigGap gap) : RigEvent(gap.Place)
{
    public override void Apply(ModelFold fold, int id) => fold.Model.Gaps.Add(gap);
}

/// <summary>What is said is only a part of a rig: nobody was seen to call the code that says it.</summary>
internal sealed class PartBegun() : RigEvent(PlaceId.None)
{
    public override void Apply(ModelFold fold, int id) => fold.Model.IsPart = true;
}
