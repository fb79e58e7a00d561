using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>Lowers one function from the compiler's operations to flat code. Operations that it doesn't know become <see cref="Unread"/>.</summary>
internal sealed partial class Lowerer
{
    private readonly Lowerer? outer;
    private readonly CodeBody body;
    private readonly List<Instruction> code = [];
    private readonly List<Handler> handlers = [];
    private readonly Dictionary<ISymbol, int> slots = new(SymbolEqualityComparer.Default);
    private readonly HashSet<ISymbol> shared;
    private readonly List<(int Outer, int Inner)> captured = [];
    private readonly List<JumpTarget> targets = [];
    private readonly Stack<(SyntaxNode Syntax, TextSpan Span)> spans = new();
    private readonly Dictionary<ISymbol, CodeBody> localFunctions = new(SymbolEqualityComparer.Default);
    private readonly Dictionary<ISymbol, IReadOnlyList<(int, int)>> localCaptures = new(SymbolEqualityComparer.Default);
    private readonly ISymbol? owner;
    private readonly IAssemblySymbol? home;
    private readonly bool? iterates;
    private int slotCount;
    private int depth;

    private Lowerer(CodeBody body, ISymbol? owner, IReadOnlyList<IOperation> roots)
        : this(body, owner, null, Captures.In(roots, out var iterates))
    {
        home ??= roots.FirstOrDefault()?.SemanticModel?.Compilation.Assembly;
        this.iterates = iterates;
    }

    private Lowerer(CodeBody body, ISymbol? owner, Lowerer? outer, HashSet<ISymbol> shared)
    {
        home = owner?.ContainingAssembly ?? outer?.home;
        this.body = body;
        this.owner = owner;
        this.outer = outer;
        this.shared = shared;
        depth = outer?.depth ?? 0;
    }

    /// <summary>Lowers a method, accessor, constructor or initialiser.</summary>
    public static CodeBody Lower(string name, string path, IMethodSymbol? method, IEnumerable<IOperation> operations, Action<Lowerer>? before = null)
    {
        var roots = operations.ToList();
        var lowered = new CodeBody(name, path)
        {
            ParameterCount = method?.Parameters.Length ?? 0,
            ReturnsThis = method?.MethodKind == MethodKind.Constructor,
            ReturnsValue = method is { ReturnsVoid: false } && method.MethodKind != MethodKind.Constructor,
            IsAsync = method is { IsAsync: true },
        };
        var lowerer = new Lowerer(lowered, method, roots);
        lowerer.DeclareVariables(method);
        lowerer.TakeReceiver(method);
        before?.Invoke(lowerer);
        foreach (var root in roots)
            lowerer.Body(root);
        lowerer.Finish(roots);
        return lowered;
    }

    /// <summary>Whether the source of a type is read: that of another project isn't, even where an editor has it at hand.</summary>
    private bool IsRead(ITypeSymbol type) => SymbolEqualityComparer.Default.Equals(type.ContainingAssembly, home) && TypeKeys.IsOfUser(type);

    private void Finish(IReadOnlyList<IOperation> roots)
    {
        // Code that doesn't compile yet may jump to a label that isn't there, or come to its end without what it returns.
        foreach (var label in labels.Values.Where(label => label.Position < 0))
            Mark(label);
        var lacksResult = owner is IMethodSymbol { ReturnsVoid: false, IsAsync: false, MethodKind: not MethodKind.Constructor };
        if (lacksResult)
            Emit(new PushConstant(OpenValue.Any));
        Emit(new Return(lacksResult));
        body.Code = [.. code];
        body.Handlers = handlers;
        body.SlotCount = slotCount;
        body.CapturedSlots = [.. slots.Where(pair => shared.Contains(pair.Key) && captured.TrueForAll(capture => capture.Inner != pair.Value)).Select(pair => pair.Value)];
        body.IsIterator = roots.Count > 0 && (iterates ?? roots.Any(root => Captures.OwnDescendants(root).Any(Captures.IsYield)));
        if (body.IsIterator && owner is IMethodSymbol { ReturnType: INamedTypeSymbol { Name: "IEnumerable" or "IEnumerator" } items })
            (body.ItemType, body.IsEnumerator) = (items.TypeArguments is [var item] ? TypeKeys.Of(item) : new TypeKey("object", TypeShape.Other), items.Name == "IEnumerator");
    }

    private void Body(IOperation root)
    {
        switch (root)
        {
            case IMethodBodyOperation method:
                Statement(method.BlockBody ?? method.ExpressionBody);
                break;
            case IConstructorBodyOperation constructor:
                if (constructor.Initializer is { } initializer)
                    Statement(initializer);
                Statement(constructor.BlockBody ?? constructor.ExpressionBody);
                break;
            case IBlockOperation block:
                Statement(block);
                break;
            default:
                // An expression body.
                Value(root);
                Emit(new Return(hasValue: true));
                break;
        }
    }

    // Parameters come first; what nested functions capture has its place before the first of them is lowered.
    private void DeclareVariables(IMethodSymbol? method)
    {
        foreach (var parameter in method?.Parameters ?? [])
            Declare(parameter);
        foreach (var variable in shared.Where(variable => variable is ILocalSymbol && SymbolEqualityComparer.Default.Equals(variable.ContainingSymbol, owner)))
            Declare(variable);
    }

    // The receiver of an extension block's members comes to them as an object's own, and is a variable like any other.
    private void TakeReceiver(IMethodSymbol? method)
    {
        if (method is not { IsStatic: false, ContainingType: { IsExtension: true, ExtensionParameter: { RefKind: not RefKind.Ref } receiver } })
            return;
        Declare(receiver);
        Emit(new PushThis());
        StoreVariable(receiver, isReference: false);
    }

    private int Declare(ISymbol symbol)
    {
        if (!slots.TryGetValue(symbol, out var slot))
            slots[symbol] = slot = slotCount++;
        return slot;
    }

    private int Temporary() => slotCount++;

    /// <summary>A variable's slot here; a variable of a function around this one is captured on its way in.</summary>
    private int SlotOf(ISymbol symbol)
    {
        if (slots.TryGetValue(symbol, out var slot))
            return slot;
        if (outer is not null && shared.Contains(symbol) && outer.Knows(symbol))
        {
            var from = outer.SlotOf(symbol);
            slots[symbol] = slot = slotCount++;
            captured.Add((from, slot));
            return slot;
        }

        return Declare(symbol);
    }

    /// <summary>Which slot of a function around this one holds the same variable as which slot here.</summary>
    internal IReadOnlyDictionary<int, int> SlotsFor(Lowerer around) =>
        // Capture now all that could be needed: once this function is lowered its slots are fixed.
        around.slots.Where(pair => shared.Contains(pair.Key)).ToList().ToDictionary(pair => pair.Value, pair => SlotOf(pair.Key));

    private bool Knows(ISymbol symbol) => slots.ContainsKey(symbol)
        || SymbolEqualityComparer.Default.Equals(symbol.ContainingSymbol, owner)
        || (outer?.Knows(symbol) ?? false);

    /// <summary>Lowers a statement or expression at its place in the source. What lies too deep inside others isn't read.</summary>
    /// <param name="operation">The statement or expression.</param>
    /// <param name="lower">Lowers it.</param>
    /// <param name="leaves">How many values it leaves on the stack: −1 if it takes one away.</param>
    private void Inside(IOperation operation, Action<Lowerer, IOperation> lower, int leaves)
    {
        Budget.Current.Lower();
        BeginSpan(operation.Syntax);
        depth++;
        if (depth <= Limits.CodeDepth && HasStack())
            lower(this, operation);
        else
            TooDeep(operation, leaves);
        depth--;
        spans.Pop();
    }

    // What the compiler adds to an expression, such as a conversion, stands for the same source.
    private void BeginSpan(SyntaxNode syntax) => spans.Push(spans.Count > 0 && spans.Peek() is var around && around.Syntax == syntax ? around : (syntax, syntax.Span));

    private void TooDeep(IOperation operation, int leaves)
    {
        Emit(new Unread($"code more than {Limits.CodeDepth} deep inside itself", operation.Type is null ? null : KeyOf(operation)));
        for (var i = 1; i > leaves; i--)
            Emit(new Pop());
    }

    // The limit is far from what a stack holds; a host that has less of it left must survive all the same.
    private static bool HasStack()
    {
        try
        {
            RuntimeHelpers.EnsureSufficientExecutionStack();
            return true;
        }
        catch (InsufficientExecutionStackException)
        {
            return false;
        }
    }

    private void Emit(Instruction instruction)
    {
        if (code.Count >= Limits.CodeSize)
            throw new ReadingStopped($"a function becomes more than {Limits.CodeSize} instructions", new Origin(body.Path, spans.Count > 0 ? spans.Peek().Span : default));
        if (instruction.Span == default && spans.Count > 0)
            instruction.Span = spans.Peek().Span;
        code.Add(instruction);
    }

    private void Mark(JumpLabel label) => label.Position = code.Count;

    /// <summary>Where the ways of a condition can end: where they join, and at the ends of the loops around it.</summary>
    private JumpLabel[] Stops(params JumpLabel[] first) =>
        [.. first, .. targets.Where(target => target.Symbol is not null).SelectMany(target => new[] { target.Continue, target.Break }).OfType<JumpLabel>()];

    private void LoadVariable(ISymbol symbol, bool isReference)
    {
        var slot = SlotOf(symbol);
        Emit(isReference ? new LoadThrough(slot, shared.Contains(symbol)) : shared.Contains(symbol) ? new LoadShared(slot) : new LoadSlot(slot));
    }

    private void StoreVariable(ISymbol symbol, bool isReference)
    {
        var slot = SlotOf(symbol);
        Emit(isReference ? new StoreThrough(slot, shared.Contains(symbol)) : shared.Contains(symbol) ? new StoreShared(slot) : new StoreSlot(slot));
    }

    private Origin OriginOf(SyntaxNode syntax) => new(body.Path, syntax.Span);

    private IReadOnlyList<Origin> OriginsOf(IReadOnlyList<SyntaxNode> literals)
    {
        foreach (var literal in literals.Where(literal => literal.SyntaxTree.FilePath != body.Path))
            Outermost.body.Holds(literal.SyntaxTree);
        return [.. literals.Select(literal => new Origin(literal.SyntaxTree.FilePath, literal.Span))];
    }

    private Lowerer Outermost => outer?.Outermost ?? this;

    private static TypeKey KeyOf(IOperation operation) => TypeKeys.Of(operation.Type);

    /// <summary>A loop, switch or protected stretch that jumps can leave.</summary>
    private sealed record JumpTarget(ILabelSymbol? Symbol, ILabelSymbol? ContinueSymbol, JumpLabel? Break, JumpLabel? Continue, IOperation? Finally);
}
