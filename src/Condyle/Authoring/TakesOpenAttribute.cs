namespace Condyle;

/// <summary>Marks a member without a twin that gives a right answer for handles of unknown elements too, so that a reading calls it for those as well.</summary>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property | AttributeTargets.Constructor)]
internal sealed class TakesOpenAttribute : Attribute;
