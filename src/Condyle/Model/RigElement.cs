namespace Condyle.Model;

/// <summary>Anything that a rig is made of.</summary>
internal abstract class RigElement(int id, RigEvent said)
{
    /// <summary>The number of the event that made it.</summary>
    public int Id { get; } = id;

    public PlaceId Place { get; } = said.Place;

    public int Scope { get; } = said.Scope;

    /// <summary>Whether it was only seen by its type: nothing else about it is known.</summary>
    public bool IsUnknown { get; init; }

    /// <summary>How people are told of it.</summary>
    public abstract string Title { get; }

    /// <summary>Elements are themselves alone; their number tells them apart faster than where they lie in memory.</summary>
    public sealed override int GetHashCode() => Id;

    /// <summary>Opens all that unknown code could have changed.</summary>
    public virtual void Forget()
    {
    }
}
