namespace Condyle.Model;

/// <summary>One thing that rig code said. The draft is the list of them, and the model is what they add up to.</summary>
internal abstract class RigEvent(PlaceId place)
{
    public PlaceId Place { get; } = place;

    /// <summary>
    /// The stretch of code that may or may not run, or may run many times, in which this was said; 0 is the code that certainly runs once.
    /// What is said about an element in another scope than its own may not hold, so the fold leaves it open.
    /// </summary>
    public int Scope { get; set; }

    /// <summary>How it is said in rig code; none where another event of the same sentence says it, or where code doesn't.</summary>
    public virtual Saying? SaidIn(EventLog log) => null;

    /// <summary>Adds what was said to the model that is being folded; <paramref name="id"/> is the event's number in the log.</summary>
    public abstract void Apply(ModelFold fold, int id);
}
