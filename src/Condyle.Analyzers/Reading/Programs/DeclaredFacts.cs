using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What readings have asked about the declarations of a program, and the answers. They are kept from one compilation to the next only as long as nothing
/// else is declared anywhere: an answer depends on declarations alone and holds no symbol. So while people type in bodies, the compiler isn't asked again
/// for the types and members of each rig.
/// </summary>
internal sealed class DeclaredFacts
{
    private static readonly KeptWhileTyping<DeclaredFacts> Kept = new();
    private readonly ulong declared;
    private readonly ConcurrentDictionary<(string Question, string About, string With), object?> answers = new();

    public DeclaredFacts(ulong declared = 0) => this.declared = declared;

    public static DeclaredFacts Of(Compilation compilation, Declarations declarations) =>
        Kept.Of(compilation, last => last.declared == declarations.All ? last : null, () => new DeclaredFacts(declarations.All));

    public T Of<T>(string question, string about, Func<T> answer) => Of(question, about, "", answer);

    /// <summary>The answer to a question about something together with something else.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="about">The id of what it is asked about.</param>
    /// <param name="with">The id of what it is asked about as well.</param>
    /// <param name="answer">Works out the answer.</param>
    /// <param name="lasts">Whether the answer can be kept; all of them when it isn't given.</param>
    public T Of<T>(string question, string about, string with, Func<T> answer, Func<T, bool>? lasts = null)
    {
        if (answers.TryGetValue((question, about, with), out var known))
            return (T)known!;
        var found = answer();
        if (lasts?.Invoke(found) != false)
            answers[(question, about, with)] = found;
        return found;
    }
}
