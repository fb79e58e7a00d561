using Condyle.Model;

namespace Condyle;

/// <summary>Refuses handles that no draft ever gave out, and those that another one did.</summary>
internal static class HandleGuard
{
    public static RigDraft Of(RigDraft? draft, string what) => draft ?? throw new InvalidOperationException(
        $"This {what} was never made: it is the default of its type. Get one from the RigDraft.");

    /// <summary>What a handle stands for; the default of its type would stand for whatever was said first.</summary>
    public static int Of(RigDraft? draft, string what, int id)
    {
        _ = Of(draft, what);
        return id;
    }

    /// <summary>What a handle stands for in a rig; one that another rig gave out would stand for something else here.</summary>
    public static int IdIn<THandle>(this THandle handle, RigDraft rig)
        where THandle : struct, IHandle =>
        ReferenceEquals(handle.Draft, rig) ? handle.Id : throw OfAnotherRig(Called(handle));

    public static ArgumentException OfAnotherRig(string what) =>
        new($"{what} was made by another RigDraft, so nothing of this rig is meant by it. Make it in this rig, and keep no handle from one rig to the next.");

    private static string Called(IHandle handle) =>
        handle.Draft.Log[handle.Id] is INamedEvent named ? $"{handle.GetType().Name} '{named.Name}'" : $"A {handle.GetType().Name}";
}
