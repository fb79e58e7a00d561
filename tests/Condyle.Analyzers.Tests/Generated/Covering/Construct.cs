using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A construct of C# that rig code is made of, and how it is recognised.</summary>
/// <param name="Syntax">The type of the nodes that can be one.</param>
internal sealed record Construct(string Name, Type Syntax, Func<SyntaxNode, bool> IsAt);
