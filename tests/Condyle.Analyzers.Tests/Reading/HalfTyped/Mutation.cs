using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>A slip of the keyboard: some tokens of a file are deleted, doubled or swapped.</summary>
internal sealed record Mutation(int Source, int Seed)
{
    private const int MostSlips = 3;

    /// <summary><c>CONDYLE_MUTATIONS</c> sets how many are tried and <c>CONDYLE_MUTATIONS_FROM</c> which is the first, so that a long run can be shared out.</summary>
    public static int Tried(int inTheSuite) => Setting("CONDYLE_MUTATIONS", inTheSuite);

    /// <summary>The same mutations on every run.</summary>
    public static IEnumerable<Mutation> Of(int sources, int count, int seed)
    {
        var random = new Random(seed);
        // Made one by one: what is skipped must draw its numbers too.
        return Enumerable.Range(0, First + count).Select(_ => new Mutation(random.Next(sources), random.Next())).ToList().Skip(First);
    }

    private static int First => Setting("CONDYLE_MUTATIONS_FROM", 0);

    private static int Setting(string name, int otherwise) => int.TryParse(Environment.GetEnvironmentVariable(name), out var set) ? set : otherwise;

    /// <summary>The text as it is after the slips.</summary>
    public string Apply(string text)
    {
        var random = new Random(Seed);
        var tokens = CSharpSyntaxTree.ParseText(text, new CSharpParseOptions(LanguageVersion.Preview)).GetRoot().DescendantTokens().Select(token => token.ToFullString()).ToList();
        for (var slips = random.Next(1, MostSlips + 1); slips > 0 && tokens.Count > 1; slips--)
        {
            var (at, other) = (random.Next(tokens.Count), random.Next(tokens.Count));
            switch (random.Next(4))
            {
                case 0: tokens.RemoveAt(at); break;
                case 1: tokens.Insert(at, tokens[at]); break;
                case 2: (tokens[at], tokens[other]) = (tokens[other], tokens[at]); break;
                default: (tokens[at], tokens[Math.Min(at + 1, tokens.Count - 1)]) = (tokens[Math.Min(at + 1, tokens.Count - 1)], tokens[at]); break;
            }
        }

        return string.Concat(tokens);
    }
}
