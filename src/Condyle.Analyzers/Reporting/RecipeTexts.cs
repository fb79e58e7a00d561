using Condyle.Analyzers.Reading;
using Condyle.Rules;

namespace Condyle.Analyzers.Reporting;

/// <summary>The texts that recipes make names of, by the literals that they are written as.</summary>
internal sealed class RecipeTexts
{
    private readonly Dictionary<Origin, List<(ReadPath Path, RecipeRecord Recipe)>> byLiteral = [];

    public RecipeTexts(IEnumerable<ReadPath> paths)
    {
        foreach (var path in paths)
        {
            foreach (var recipe in path.Calls.Recipes)
            {
                foreach (var origin in path.Calls.TextsGivenTo(recipe.Call.Arguments).SelectMany(text => text.Origins))
                    Add(origin, path, recipe);
            }
        }
    }

    /// <summary>Whether a literal is part of what a recipe is given.</summary>
    public bool Have(Origin literal) => byLiteral.ContainsKey(literal);

    /// <summary>Whether all names of all recipes that are given a literal come right by another one in its place.</summary>
    public bool EachWants(Origin literal, string from, string to) =>
        byLiteral.TryGetValue(literal, out var all) && all.TrueForAll(use => Wants(use.Path, use.Recipe, from, to));

    private static bool Wants(ReadPath path, RecipeRecord recipe, string from, string to)
    {
        var wanted = false;
        foreach (var finding in path.Findings)
        {
            if (finding.Subject is not { } part || part.Id < recipe.First || part.Id >= recipe.Last || finding.Rule is not NotPortable)
                continue;
            if (finding.Repairs is not [ReplaceText replace])
                return false;
            if (!replace.From.Contains(from))
                continue;
            if (replace.From.Replace(from, to) != replace.To)
                return false;
            wanted = true;
        }

        return wanted;
    }

    private void Add(Origin literal, ReadPath path, RecipeRecord recipe)
    {
        if (!byLiteral.TryGetValue(literal, out var uses))
            byLiteral[literal] = uses = [];
        uses.Add((path, recipe));
    }
}
