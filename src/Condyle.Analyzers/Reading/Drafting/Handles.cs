using System.Collections.Concurrent;

namespace Condyle.Analyzers.Reading;

/// <summary>Handles as code can hold them: one that was never given out, such as a default, belongs to no draft.</summary>
internal static class Handles
{
    private static readonly ConcurrentDictionary<Type, object> NeverGiven = new();

    /// <summary>The draft that gave a handle out; an exception of the code that is read where none did.</summary>
    public static RigDraft DraftOf(IHandle handle)
    {
        try
        {
            return handle.Draft;
        }
        catch (InvalidOperationException refused)
        {
            throw new ThrownByCode(typeof(InvalidOperationException).FullName!, refused.Message);
        }
    }

    /// <summary>Whether it isn't known which element a handle means.</summary>
    public static bool IsOpen(IHandle handle) => IsMade(handle) && handle.Draft.IsOpen(handle.Id);

    public static bool IsMade(IHandle handle) => !handle.Equals(NeverGiven.GetOrAdd(handle.GetType(), Activator.CreateInstance));
}
