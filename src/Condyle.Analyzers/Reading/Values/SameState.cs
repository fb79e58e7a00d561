namespace Condyle.Analyzers.Reading;

/// <summary>Whether two places hold the very same: of two records that are equal, one may still be changed without the other.</summary>
internal sealed class SameState : KnownEquality
{
    protected override bool? AreEqual(ObjectValue a, object b) => a.Type.IsStruct || a.Type.Id.StartsWith("anonymous ", StringComparison.Ordinal) ? null : ReferenceEquals(a, b);
}
