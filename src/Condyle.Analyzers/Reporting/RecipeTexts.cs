using Condyle.Analyzers.Reading;
using Condyle.Model;
using Condyle.Rules;

namespace Condyle.Analyzers.Reporting;

/// <summary>The texts that recipes make names of, by the literals that they are written as.</summary>
internal sealed class RecipeTexts
{
    private readonly Dictionary<Origin, List<(ReadPath Path, RecipeRecord Recipe, string? Text)>> byLiteral = [];

    public RecipeTexts(IEnumerable<ReadPath> paths)
    {
        foreach (var path in paths)
        {
            foreach (var recipe in path.Calls.Recipes)
            {
                foreach (var text in path.Calls.TextsGivenTo(recipe.Call.Arguments))
                {
                    foreach (var origin in text.Origins)
                        Add(origin, (path, recipe, text.TryKnown(out var known) ? known : null));
                }
            }
        }
    }

    /// <summary>Whether a literal is part of what a recipe is given.</summary>
    public bool Have(Origin literal) => byLiteral.ContainsKey(literal);

    /// <summary>Whether all names that a rule finds fault with, of all recipes that are given a literal, come right by another one in its place.</summary>
    /// <param name="literal">The literal.</param>
    /// <param name="from">What it says; none where that is another text each time.</param>
    /// <param name="to">What it would say.</param>
    /// <param name="rule">The rule.</param>
    public bool EachWants(Origin literal, string? from, string to, Rule rule) =>
        byLiteral.TryGetValue(literal, out var all) && all.TrueForAll(use => (from ?? use.Text) is { } said && Wants(use.Path, use.Recipe, said, to, rule));

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

    private void Add(Origin literal, (ReadPath Path, RecipeRecord Recipe, string? Text) use)
    {
        if (!byLiteral.TryGetValue(literal, out var uses))
            byLiteral[literal] = uses = [];
        uses.Add(use);
    }
}
