namespace Condyle;

/// <summary>What all handles share: the draft they belong to and the number of the event that made their element.</summary>
internal interface IHandle
{
    RigDraft Draft { get; }

    int Id { get; }
}
