namespace Condyle;

/// <summary>What kind of element a reading knows only by its type.</summary>
internal enum UnknownKind
{
    Node,
    Group,
    Control,
    Joint,
    CopyJoint,
    Skeleton,
    Spot,
    Chain,
    Copy,
    Drive,
    Blend,
    Solver,
    Switch,
    Dial,
    Choice,
    Measure,
    Response,
    Space,
    Label,
}
