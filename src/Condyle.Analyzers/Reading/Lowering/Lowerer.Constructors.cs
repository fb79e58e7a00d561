using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Constructors, initialisers and the accessors that the compiler makes.</summary>
internal sealed partial class Lowerer
{
    public static CodeBody LowerInitialisers(string path, IMethodSymbol? method, IEnumerable<IOperation> initialisers)
    {
        var list = initialisers.ToList();
        return Start("an initialiser", path, method, list, lowerer => list.ForEach(lowerer.Initialiser));
    }

    public static CodeBody LowerConstructor(
        string path, IMethodSymbol constructor, bool isPrimary, IReadOnlyList<IOperation> initialisers, IInvocationOperation? baseCall, IMethodSymbol? implicitBase, IOperation? own)
    {
        List<IOperation> roots = [.. initialisers];
        if (baseCall is not null)
            roots.Add(baseCall);
        if (own is not null)
            roots.Add(own);
        return Start(constructor.ContainingType.Name, path, constructor, roots, lowerer =>
        {
            if (isPrimary)
                lowerer.KeepParameters(constructor);
            foreach (var initialiser in initialisers)
                lowerer.InitialiserAnywhere(initialiser);
            if (baseCall is not null)
            {
                lowerer.Effect(baseCall);
            }
            else if (implicitBase is not null)
            {
                lowerer.Emit(new ConstructorCall(TypeKeys.MethodOf(implicitBase), 0, null));
                lowerer.Emit(new Pop());
            }

            if (own is not null)
                lowerer.Body(own);
        });
    }

    public static CodeBody LowerAutoAccessor(string path, IMethodSymbol accessor, IPropertySymbol property)
    {
        var field = Members.IdOf(property);
        return Start(property.Name, path, accessor, [], lowerer =>
        {
            if (accessor.MethodKind == MethodKind.PropertyGet)
            {
                if (property.IsStatic)
                {
                    lowerer.Emit(new LoadStatic(TypeKeys.Of(property.ContainingType), field, keepsSeam: false));
                }
                else
                {
                    lowerer.Emit(new PushThis());
                    lowerer.Emit(new LoadField(field, TypeKeys.Of(property.Type)));
                }

                lowerer.Emit(new Return(hasValue: true));
                return;
            }

            lowerer.LoadVariable(accessor.Parameters[0], isReference: false);
            if (property.IsStatic)
                lowerer.Emit(new StoreStatic(TypeKeys.Of(property.ContainingType), field));
            else
                lowerer.StoreOnThis(field);
        });
    }

    public static CodeBody LowerEventAccessor(string path, IMethodSymbol accessor, IEventSymbol raised)
    {
        var (field, type) = (Members.IdOf(raised), TypeKeys.Of(raised.Type));
        return Start(raised.Name, path, accessor, [], lowerer =>
        {
            var handlers = raised.IsStatic ? lowerer.StaticTarget(raised.ContainingType, field, keepsSeam: false)
                : new Target(Nothing, () => { lowerer.Emit(new PushThis()); lowerer.Emit(new LoadField(field, type)); }, () => lowerer.StoreOnThis(field));
            handlers.Load();
            lowerer.LoadVariable(accessor.Parameters[0], isReference: false);
            lowerer.Emit(new BinaryOperator(accessor.MethodKind == MethodKind.EventAdd ? BinaryOperatorKind.Add : BinaryOperatorKind.Subtract, false, type));
            handlers.Store();
        });
    }

    private static CodeBody Start(string name, string path, IMethodSymbol? method, IReadOnlyList<IOperation> roots, Action<Lowerer> lower)
    {
        var lowered = new CodeBody(name, path)
        {
            ParameterCount = method?.Parameters.Length ?? 0,
            ReturnsThis = method?.MethodKind == MethodKind.Constructor,
        };
        var lowerer = new Lowerer(lowered, method, roots);
        foreach (var parameter in method?.Parameters ?? [])
            lowerer.Declare(parameter);
        lower(lowerer);
        lowerer.Finish([]);
        return lowered;
    }

    private void KeepParameters(IMethodSymbol constructor)
    {
        foreach (var parameter in constructor.Parameters)
        {
            LoadVariable(parameter, isReference: false);
            StoreOnThis(Members.FieldOf(parameter));
        }
    }

    // One in the file of another part is a function of its own there, since places are told within the file of their function.
    private void InitialiserAnywhere(IOperation operation)
    {
        var path = operation.Syntax.SyntaxTree.FilePath;
        if (path == body.Path)
        {
            Initialiser(operation);
            return;
        }

        var elsewhere = new CodeBody(body.Name, path);
        var lowerer = new Lowerer(elsewhere, owner, this, shared);
        lowerer.Initialiser(operation);
        lowerer.Finish([]);
        Emit(new MakeFunction(elsewhere, lowerer.captured));
        Emit(new InvokeFunction(0, null, default, null) { Span = owner?.Locations.FirstOrDefault(location => location.SourceTree?.FilePath == body.Path)?.SourceSpan ?? default });
        Emit(new Pop());
    }

    private void Initialiser(IOperation operation)
    {
        if (operation is not ISymbolInitializerOperation { Value: var value })
            return;
        IEnumerable<(ISymbol Symbol, string Id)> targets = operation switch
        {
            IFieldInitializerOperation fields => fields.InitializedFields.Select(field => ((ISymbol)field, Members.IdOf(field))),
            IPropertyInitializerOperation properties => properties.InitializedProperties.Select(property => ((ISymbol)property, Members.IdOf(property))),
            _ => [],
        };
        foreach (var (symbol, id) in targets)
        {
            CopiedValue(value);
            if (symbol.IsStatic)
                Emit(new StoreStatic(TypeKeys.Of(symbol.ContainingType), id));
            else
                StoreOnThis(id);
        }
    }
}
