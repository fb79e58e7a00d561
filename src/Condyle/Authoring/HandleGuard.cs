namespace Condyle;

/// <summary>Refuses handles that no draft ever gave out.</summary>
internal static class HandleGuard
{
    public static RigDraft Of(RigDraft? draft, string what) => draft ?? throw new InvalidOperationException(
        $"This {what} was never made: it is the default of its type. Get one from the RigDraft.");
}
