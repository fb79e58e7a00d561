using System.Text.RegularExpressions;
using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>The labels that a blend lacks: for each of its two copies, none that is shown while the copy has the limb.</summary>
internal sealed class MissingLabels
{
    private readonly BlendSentence sentence;
    private readonly RigReading reading;
    private readonly IReadOnlyList<(string Tag, ExpressionSyntax Weight)> copies;
    private readonly SidedName? root;

    private MissingLabels(BlendSentence sentence, RigReading reading, IReadOnlyList<(string, ExpressionSyntax)> copies, SidedName? root)
    {
        this.sentence = sentence;
        this.reading = reading;
        this.copies = copies;
        this.root = root;
    }

    public string Title => copies.Count == 1 ? $"Add the label '{copies[0].Tag.ToUpperInvariant()}'" : $"Add the labels '{copies[0].Tag.ToUpperInvariant()}' and '{copies[1].Tag.ToUpperInvariant()}'";

    /// <summary>What a sentence lacks, the same each time that it is said; none where it lacks nothing, or where that isn't known.</summary>
    public static MissingLabels? Of(BlendSentence sentence, RigReading reading)
    {
        if (sentence.Weights.Count != 2 || !reading.IsWhole)
            return null;
        var said = reading.Paths.SelectMany(path => path.Calls.All
            .Where(call => call.Call.Path == reading.Code.SyntaxTree.FilePath && call.Call.Call.NameSpan == sentence.Verb.Span)
            .Select(call => (path.Model, Blend: path.Model.Blends.Find(blend => blend.Id == call.Event)))).ToList();
        if (said.Count == 0 || !said.TrueForAll(one => IsPair(one.Blend)))
            return null;
        var lacking = said.ConvertAll(one => string.Join(" ", one.Blend!.Sources.Where(source => !IsShown(source, one.Model)).Select(source => source.Tag.ToString()))).Distinct().ToList();
        if (lacking is not [{ Length: > 0 } tags])
            return null;
        var sources = said[0].Blend!.Sources;
        var copies = sources.Select((source, index) => (source.Tag.ToString(), sentence.Weights[index])).Where(copy => tags.Split(' ').Contains(copy.Item1)).ToList();
        return new(sentence, reading, copies, said.Count == 1 ? SidedName.Of(said[0].Blend!.Chain!.Joints![0].Name, reading.Conventions) : null);
    }

    /// <summary>Ways to say them, the nicest first; whether a way gives each label a name of its own is for the reading to tell.</summary>
    public IEnumerable<IReadOnlyList<string>> Code()
    {
        var part = PartOf((sentence.Chain as IdentifierNameSyntax)?.Identifier.ValueText ?? "limb");
        if (reading.SideAt(sentence.Statement.SpanStart) is { } side)
            yield return Labels(word => $"$\"{word}_label_{{{side}}}\"", part);
        yield return Labels(word => $"\"{word}_label{(root is { } sided ? reading.Conventions.MarkOf(sided.Side) : "")}\"", part);
        if (sentence.Chain is IdentifierNameSyntax chain)
            yield return Labels(word => $"$\"{word}_label\"", $"{{{chain.Identifier.Text}.Root}}");
    }

    private static bool IsPair(RigBlend? blend) =>
        blend is { IsUnknown: false, SourcesAreOpen: false, Chain.Joints.Count: > 0, Sources: [{ Copy: not null } one, { Copy: not null } other] }
        && one.Tag.TryKnown(out var tag) && other.Tag.TryKnown(out var otherTag) && tag != otherTag && tag.All(Conventions.IsPortable) && otherTag.All(Conventions.IsPortable)
        && one.Weight.TryKnown(out var weight) && other.Weight.TryKnown(out var rest) && weight.Switches.Count > 0 && weight.Equals(rest.Inverse);

    private static bool IsShown(BlendSource source, RigModel model) =>
        source.Weight.TryKnown(out var weight) && model.Labels.Exists(label => label.IsUnknown || !label.ShownBy.TryKnown(out var shown) || weight.Equals(shown));

    private List<string> Labels(Func<string, string> named, string part) => [.. copies.Select(copy =>
        $"{sentence.Draft}.Label({named(reading.Conventions.IsTagAfterPart ? $"{part}_{copy.Tag}" : $"{copy.Tag}_{part}")}, \"{copy.Tag.ToUpperInvariant()}\").ShownBy({copy.Weight});")];

    /// <summary>A variable's name as a part's: <c>leftArm</c> is an <c>arm</c>.</summary>
    private static string PartOf(string variable)
    {
        var words = Regex.Split(variable, "(?<=[a-z0-9])(?=[A-Z])|_").Select(word => word.ToLowerInvariant()).Where(word => word is not ("left" or "right" or "chain" or "")).ToList();
        return words.Count == 0 ? "limb" : string.Join("_", words);
    }
}
