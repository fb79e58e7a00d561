namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>A client that somebody types into: a language server, or a host like an editor's.</summary>
internal interface ITypedInto
{
    /// <summary>Replaces a stretch of a file's text, as typing does.</summary>
    Task TypeAsync(string file, string over, string text);

    /// <summary>The squiggles of our rules in a file, in its order.</summary>
    Task<IReadOnlyList<Squiggle>> SquigglesInAsync(string file);
}

/// <summary>A squiggle: its rule, and the text that is underlined.</summary>
internal sealed record Squiggle(string Rule, string Text)
{
    public override string ToString() => $"{Rule} {Text}";
}
