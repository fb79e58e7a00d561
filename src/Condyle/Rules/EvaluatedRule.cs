namespace Condyle.Rules;

/// <summary>A rule that looks at where nodes stand in a pose, or why they can't. What it finds of a sentence that another rule calls wrong is that rule's finding.</summary>
internal abstract class EvaluatedRule : Rule;
