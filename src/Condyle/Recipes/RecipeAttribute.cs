namespace Condyle;

/// <summary>
/// Marks a method that says many sentences at once. Its twin answers nothing where it would have to guess, such as for a chain whose joints aren't known;
/// a reading then knows no more of what it builds.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class RecipeAttribute : Attribute;
