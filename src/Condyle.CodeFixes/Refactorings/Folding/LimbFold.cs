using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Model;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>The changes that put a call of the recipe in the place of statements that say a limb.</summary>
internal sealed class LimbFold
{
    private readonly RigReading reading;
    private readonly BlockSyntax block;
    private readonly SourceText text;
    private readonly List<StatementSyntax> folded = [];
    private readonly Dictionary<string, string> handles = new(StringComparer.Ordinal);

    private LimbFold(RigReading reading, BlockSyntax block, SourceText text)
    {
        (this.reading, this.block, this.text) = (reading, block, text);
    }

    /// <summary>None where a block says no limb, or says something else with it.</summary>
    public static IReadOnlyList<TextChange>? In(BlockSyntax block, RigReading reading, SourceText text)
    {
        var fold = new LimbFold(reading, block, text);
        string? call = null;
        string? name = null;
        foreach (var path in reading.Paths)
        {
            var (said, limbs) = (new Sayings(path.Log), new List<SaidLimb>());
            foreach (var blend in path.Calls.All.Where(each => path.Log[each.Event] is BlendBegun && fold.IsHere(each.Call)).ToList())
            {
                if (SaidLimb.Around(blend.Event, said, reading.Conventions) is not { } limb || fold.Call(limb, blend.Call, path) is not { } code || (call is not null && call != code))
                    return null;
                (call, name) = (code, limb.Name);
                limbs.Add(limb);
            }

            fold.Take(limbs, path);
        }

        return call is null || name is null || fold.folded.Count == 0 ? null : fold.Changes(call, name);
    }

    private bool IsHere(CallRecord call) => call.Path == reading.Code.SyntaxTree.FilePath && block.Span.Contains(call.Call.NameSpan) && block.Statements.Any(statement => statement.Span.Contains(call.Call.NameSpan));

    private string? Call(SaidLimb limb, CallRecord blend, ReadPath path)
    {
        var parents = new[] { limb.Parents.Under, limb.Parents.Systems, limb.Parents.Space }.Select(said => Argument(path.Calls.Find(said))).ToList();
        if (Argument(blend) is not { } bones || parents.Contains(null) || Rig is not { } rig)
            return null;
        var side = reading.SideAt(block.Statements[0].SpanStart) ?? $"{nameof(Side)}.{(limb.Side == Side.Left ? nameof(Side.Left) : nameof(Side.Right))}";
        var options = limb.Options.Count == 0 ? "" : $", new {nameof(LimbOptions)} {{ {string.Join(", ", limb.Options)} }}";
        return $"{rig}.{nameof(RigDraft.Limb)}({bones}, \"{limb.Name}\", {side}, under: {parents[0]}, {parents[1]}, space: {parents[2]}{options})";
    }

    private string? Rig => block.DescendantNodes().OfType<IdentifierNameSyntax>().FirstOrDefault(name => reading.Code.GetTypeInfo(name).Type is { Name: nameof(RigDraft) })?.Identifier.Text;

    private string? Argument(CallRecord? call) =>
        call is not null && call.Path == reading.Code.SyntaxTree.FilePath && call.Call.ArgumentSpans is [{ } span, ..] ? text.ToString(span) : null;

    /// <summary>Gathers the statements that say nothing but the limb, and the locals that hold what the recipe gives back.</summary>
    private void Take(List<SaidLimb> limbs, ReadPath path)
    {
        var here = path.Calls.All.Where(each => IsHere(each.Call)).ToList();
        foreach (var statement in block.Statements)
        {
            var events = here.Where(each => statement.Span.Contains(each.Call.Call.NameSpan)).Select(each => each.Event).ToList();
            // What is said of a handle later, without making anything, is said of the recipe's as well.
            if (!events.Exists(said => limbs.Exists(limb => limb.Makes(said))) || !events.TrueForAll(said => limbs.Exists(limb => limb.Says(said))))
                continue;
            if (!folded.Contains(statement))
                folded.Add(statement);
            if (statement is LocalDeclarationStatementSyntax { Declaration.Variables: [var local] } && HeldBy(events[events.Count - 1], limbs, path.Log) is { } handle)
                handles[local.Identifier.ValueText] = handle;
        }
    }

    /// <summary>A sentence holds what it made last, or what it was said of.</summary>
    private static string? HeldBy(int last, List<SaidLimb> limbs, EventLog log)
    {
        var held = log[last] is CopyJointMade joint ? joint.Copy : log[last].SaidIn(log) is { Makes: false, Of: { } of } ? of : last;
        return limbs.Select(limb => limb.Handles.TryGetValue(held, out var handle) ? handle : null).FirstOrDefault(handle => handle is not null);
    }

    private List<TextChange>? Changes(string call, string name)
    {
        AddLeftovers();
        if (folded.Exists(DoesElse))
            return null;
        var taken = (block.FirstAncestorOrSelf<MemberDeclarationSyntax>()?.DescendantTokens() ?? []).Where(token => token.IsKind(SyntaxKind.IdentifierToken)).Select(token => token.ValueText);
        var kept = new LocalNames(taken, reading.Conventions).Free(name);
        var changes = new List<TextChange>();
        foreach (var use in Uses())
        {
            if (!handles.TryGetValue(use.Identifier.ValueText, out var handle))
                return null;
            changes.Add(new(use.Span, $"{kept}.{handle}"));
        }

        var first = folded.OrderBy(statement => statement.SpanStart).First();
        var comments = folded.OrderBy(statement => statement.SpanStart).SelectMany(KeptComments.Of).Select(comment => comment + text.NewLineAt(first.SpanStart) + text.IndentAt(first.SpanStart));
        changes.Add(new(first.Span, $"{string.Concat(comments)}{(changes.Count > 0 ? $"var {kept} = " : "")}{call};"));
        changes.AddRange(folded.Where(statement => statement != first).Select(statement => new TextChange(LinesOf(statement), "")));
        return [.. changes.OrderBy(change => change.Span.Start)];
    }

    /// <summary>What says nothing, and is used by what is folded alone, goes as well; a list of controls that is used after it is the limb's turns.</summary>
    private void AddLeftovers()
    {
        foreach (var statement in block.Statements.OfType<LocalDeclarationStatementSyntax>().Where(statement => !folded.Contains(statement)).ToList())
        {
            if (statement.Declaration.Variables is not [var local] || reading.Code.GetDeclaredSymbol(local) is not { } symbol)
                continue;
            var uses = UsesOf(symbol).ToList();
            var (within, after) = (uses.Where(IsFolded).ToList(), uses.Where(use => !IsFolded(use)).ToList());
            var isList = (symbol as ILocalSymbol)?.Type is INamedTypeSymbol { TypeArguments: [{ Name: nameof(Control) }] };
            if (within.Count == 0 || (after.Count > 0 && !isList) || !IsFilledThere(local, within))
                continue;
            folded.Add(statement);
            if (isList)
                handles[local.Identifier.ValueText] = nameof(Limb.Turns);
        }
    }

    // What code goes on to use must have been made by what is folded: it is assigned or filled there.
    private bool IsFilledThere(VariableDeclaratorSyntax local, List<IdentifierNameSyntax> within) => local.Initializer?.Value is not null
        && within.Exists(use => use.Parent is AssignmentExpressionSyntax assigned && assigned.Left == use || use.Parent is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Add" });

    private bool IsFolded(SyntaxNode node) => folded.Exists(statement => statement.Span.Contains(node.Span));

    /// <summary>Whether a statement does something to what stays, which the sentence wouldn't.</summary>
    private bool DoesElse(StatementSyntax statement) => statement.DescendantNodesAndSelf().Any(node => CodeEffects.IsOne(node, reading.Code) && !IsOfLimb(node));

    // Condyle's sentences are those of the limb, and what goes may be set and filled.
    private bool IsOfLimb(SyntaxNode node) => node switch
    {
        AssignmentExpressionSyntax assigned => IsOfFolded(assigned.Left),
        InvocationExpressionSyntax or SimpleNameSyntax => IsOfFolded((ExpressionSyntax)node) || reading.Code.GetSymbolInfo(node).Symbol?.ContainingAssembly.Name == nameof(Condyle),
        VariableDesignationSyntax => true,
        PostfixUnaryExpressionSyntax step => IsOfFolded(step.Operand),
        PrefixUnaryExpressionSyntax step => IsOfFolded(step.Operand),
        _ => false,
    };

    /// <summary>Whether an expression begins with a local that goes as well.</summary>
    private bool IsOfFolded(ExpressionSyntax expression) => expression switch
    {
        MemberAccessExpressionSyntax member => IsOfFolded(member.Expression),
        ElementAccessExpressionSyntax element => IsOfFolded(element.Expression),
        InvocationExpressionSyntax call => IsOfFolded(call.Expression),
        IdentifierNameSyntax => reading.Code.GetSymbolInfo(expression).Symbol is ILocalSymbol local && local.DeclaringSyntaxReferences.All(declared => folded.Exists(statement => statement.Span.Contains(declared.Span))),
        _ => false,
    };

    private IEnumerable<IdentifierNameSyntax> Uses() => folded
        .SelectMany(statement => statement.DescendantNodes().OfType<VariableDeclaratorSyntax>()).Select(local => reading.Code.GetDeclaredSymbol(local)).OfType<ILocalSymbol>()
        .SelectMany(UsesOf).Where(use => !IsFolded(use));

    private IEnumerable<IdentifierNameSyntax> UsesOf(ISymbol symbol) => block.DescendantNodes().OfType<IdentifierNameSyntax>()
        .Where(name => name.Identifier.ValueText == symbol.Name && SymbolEqualityComparer.Default.Equals(reading.Code.GetSymbolInfo(name).Symbol, symbol));

    // With its lines and the empty one before them, where it has them to itself.
    private TextSpan LinesOf(StatementSyntax statement)
    {
        var (first, last) = (text.Lines.GetLineFromPosition(statement.SpanStart), text.Lines.GetLineFromPosition(statement.Span.End));
        if (!IsBlank(TextSpan.FromBounds(first.Start, statement.SpanStart)) || !IsBlank(TextSpan.FromBounds(statement.Span.End, last.End)))
            return TextSpan.FromBounds(statement.SpanStart, statement.Span.End + text.ToString(TextSpan.FromBounds(statement.Span.End, last.End)).TakeWhile(char.IsWhiteSpace).Count());
        var start = first.LineNumber > 0 && text.Lines[first.LineNumber - 1] is var before && IsBlank(before.Span) ? before.Start : first.Start;
        return TextSpan.FromBounds(start, last.EndIncludingLineBreak);
    }

    private bool IsBlank(TextSpan span) => string.IsNullOrWhiteSpace(text.ToString(span));
}
