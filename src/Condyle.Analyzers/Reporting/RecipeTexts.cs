using Condyle.Analyzers.Reading;
using Condyle.Model;
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

    /// <summary>Whether all names that a rule finds fault with, of all recipes that are given a literal, come right by another one in its place.</summary>
    public bool EachWants(Origin literal, string from, string to, Rule rule) =>
        byLiteral.TryGetValue(literal, out var all) && all.TrueForAll(use => Wants(use.Path, use.Recipe, from, to, rule));

    private static bool Wants(ReadPath path, RecipeRecord recipe, string from, string to, Rule rule)
    {
        var wanted = new Dictionary<RigElement, ReplaceText>();
        foreach (var finding in path.Findings)
        {
            if (finding.Rule != rule || finding.Subject is not { } part || !IsIn(recipe, part))
                continue;
            if (finding.Repairs is not [ReplaceText replace])
                return false;
            if (!replace.From.Contains(from))
                continue;
            if (replace.From.Replace(from, to) != replace.To)
                return false;
            wanted[part] = replace;
        }

        return wanted.Count > 0 && wanted.First().Value.IsMeantBy is var isMeant
            && path.Model.Nodes.TrueForAll(node => !IsIn(recipe, node) || wanted.ContainsKey(node) || !isMeant(node) || (node.Name.TryKnown(out var name) && !name.Contains(from)));
    }

    private static bool IsIn(RecipeRecord recipe, RigElement part) => part.Id >= recipe.First && part.Id < recipe.Last;

    private void Add(Origin literal, ReadPath path, RecipeRecord recipe)
    {
        if (!byLiteral.TryGetValue(literal, out var uses))
            byLiteral[literal] = uses = [];
        uses.Add((path, recipe));
    }
}
