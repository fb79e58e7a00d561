namespace Condyle;

/// <summary>Refuses handles that no draft ever gave out.</summary>
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
}
