namespace Condyle.Rules;

/// <summary>A rule that looks at where nodes stand in a pose, or why they can't. What it finds of a sentence is another rule's finding where that explains it.</summary>
internal abstract class EvaluatedRule : Rule;
