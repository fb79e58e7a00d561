namespace Condyle.Analyzers.Skeletons;

/// <summary>One property of the class: what it is called, its type and value in C#, and what it says about itself.</summary>
internal sealed record SkeletonMember(string Name, string Type, string Value, string Summary);
