using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>The code of one compilation as a reading asks for it: bodies by method, layouts by type. All by id, so that code needs no symbols.</summary>
/// <param name="compilation">The compilation.</param>
/// <param name="cache">Keeps lowered bodies.</param>
/// <param name="models">Gives the model of a file.</param>
/// <param name="cancellation">Stops the reading.</param>
/// <param name="facts">What is known of the declarations already, and takes what this reading finds out; none where no other compilation will follow.</param>
internal sealed class Program(Compilation compilation, CodeCache cache, Func<SyntaxTree, SemanticModel> models, CancellationToken cancellation, DeclaredFacts? facts = null)
{
    // A reading asks for some things at each call, so it has them at hand.
    private readonly Dictionary<string, ISymbol?> symbols = [];
    private readonly Dictionary<string, UserType?> types = [];
    private readonly Dictionary<string, UserType> statics = [];
    private readonly Dictionary<string, CodeBody?> bodies = [];
    private readonly Dictionary<(string, string), CodeBody?> dispatched = [];
    private readonly Dictionary<string, bool> constructed = [];
    private readonly Dictionary<string, IReadOnlyList<MethodRef>> constructors = [];
    private readonly bool isRemembered = facts is not null;
    private readonly DeclaredFacts facts = facts ?? new DeclaredFacts();
    private BodySource? source;
    private TypeRelations? relations;
    private SetOutside? setOutside;

    public BodySource Source => source ??= new(compilation, cache, models, Find, cancellation);

    public TypeRelations Relations => relations ??= new TypeRelations(compilation, Find);

    /// <summary>The code of a method; none when its source isn't part of the compilation.</summary>
    public CodeBody? BodyOf(MethodRef method)
    {
        if (!bodies.TryGetValue(method.Id, out var body))
            bodies[method.Id] = body = Body("body", method.Id, "", () => Find(method.Id) as IMethodSymbol);
        return body;
    }

    public CodeBody? BodyOf(IMethodSymbol method)
    {
        var id = Ids.Of(method.OriginalDefinition) ?? method.Name;
        if (!bodies.TryGetValue(id, out var body))
            bodies[id] = body = Body("body", id, "", () => method);
        return body;
    }

    /// <summary>Where a method is declared.</summary>
    public Origin PlaceOf(MethodRef method) => Find(method.Id)?.Locations[0] is { SourceTree: { } tree } location ? new Origin(tree.FilePath, location.SourceSpan) : new Origin("", default);

    /// <summary>The code that a call of a virtual or interface method runs on an object of a type.</summary>
    public CodeBody? BodyFor(UserType type, MethodRef method)
    {
        if (!dispatched.TryGetValue((type.Id, method.Id), out var body))
        {
            dispatched[(type.Id, method.Id)] = body = Body("override", type.Id, method.Id, () =>
                Find(type.Id) is INamedTypeSymbol own && Find(method.Id) is IMethodSymbol called ? Dispatch.Find(own, called) : null);
        }

        return body;
    }

    // An answer is remembered where the method's id leads back to it, since that is how the next compilation finds it.
    private CodeBody? Body(string question, string about, string with, Func<IMethodSymbol?> find)
    {
        var place = facts.Of(question, about, with, () => find() is { } method ? PlaceOf(method.OriginalDefinition) : null, isRemembered ? place => place is null || IsFound(place) : null);
        return place is null ? null : Source.Of(place);
    }

    private BodyPlace? PlaceOf(IMethodSymbol method)
    {
        if (Source.PlaceOf(method) is not { } place)
            return null;
        if (!symbols.ContainsKey(place.Id))
            symbols[place.Id] = method;
        return place;
    }

    private bool IsFound(BodyPlace place) => SymbolEqualityComparer.Default.Equals(Ids.Find(place.Id, compilation), Find(place.Id));

    /// <summary>The fields that others write before a rig is built, so that it isn't known what they hold when a reading begins.</summary>
    public SetOutside SetOutside => setOutside ??= new SetOutside(compilation, models, cancellation);

    /// <summary>The constructors by which code makes objects of a definition; where none does, the one with the fewest parameters.</summary>
    public IReadOnlyList<MethodRef> ConstructorsOf(RigEntry definition)
    {
        if (definition.Constructors.Count < 2)
            return definition.Constructors;
        if (!constructors.TryGetValue(definition.Id, out var called))
            constructors[definition.Id] = called = CalledOf(definition);
        return called;
    }

    // The compiler is only asked about what may be meant by its name: `new()` and aliases may.
    private IReadOnlyList<MethodRef> CalledOf(RigEntry definition)
    {
        var outside = OutsideCode.Of(compilation, cancellation);
        var names = outside.NamesFor(definition.Name);
        var used = new HashSet<string>(names.SelectMany(outside.AllMentioning).SelectMany(code => code.DescendantNodes()).OfType<BaseObjectCreationExpressionSyntax>()
            .Where(creation => creation is not ObjectCreationExpressionSyntax { Type: var type } || names.Contains(MemberNames.NameOf(type) ?? ""))
            .Select(creation => Compiler.Asked(() => models(creation.SyntaxTree).GetSymbolInfo(creation, cancellation).Symbol)).OfType<IMethodSymbol>().Select(made => TypeKeys.MethodOf(made.OriginalDefinition).Id));
        var found = definition.Constructors.Where(constructor => used.Contains(constructor.Id) || (outside.RunsProgram && constructor.Parameters.Count == 0)).ToList();
        return found.Count > 0 ? found : [definition.Constructors[0]];
    }

    public UserType? TypeOf(string id)
    {
        if (id.StartsWith("anonymous ", StringComparison.Ordinal))
            return AnonymousType(id);
        if (!types.TryGetValue(id, out var type))
            types[id] = type = facts.Of("type", id, () => IsRead(id) && Find(id) is INamedTypeSymbol symbol ? Layouts.Of(symbol, id) : null);
        return type;
    }

    public UserType AnonymousType(string id)
    {
        if (!types.TryGetValue(id, out var type))
        {
            var names = id.Substring("anonymous ".Length).Split([','], StringSplitOptions.RemoveEmptyEntries);
            types[id] = type = new UserType(id, names, [.. names.Select(_ => (TypeKey?)null)], isStruct: false, comparesByParts: true);
        }

        return type!;
    }

    public UserType StaticsOf(string id)
    {
        if (!statics.TryGetValue(id, out var type))
            statics[id] = type = facts.Of("statics", id, () => Find(id) is INamedTypeSymbol symbol ? Layouts.StaticsOf(symbol, id) : new UserType(id, [], [], false, false));
        return type;
    }

    /// <summary>Whether a type's source is part of the compilation.</summary>
    public bool IsRead(string id) => facts.Of("read", id, () => Find(id) is { } symbol && SymbolEqualityComparer.Default.Equals(symbol.ContainingAssembly, compilation.Assembly));

    /// <summary>The code of a type's constructor without parameters.</summary>
    public CodeBody? PlainConstructorOf(string id) =>
        Body("plain constructor", id, "", () => (Find(id) as INamedTypeSymbol)?.InstanceConstructors.FirstOrDefault(constructor => constructor.Parameters.IsEmpty));

    /// <summary>The ids of a type's parameters.</summary>
    public IReadOnlyList<string> ParametersOf(string id) =>
        facts.Of("parameters", id, () => (IReadOnlyList<string>)(Find(id) is INamedTypeSymbol type ? [.. TypeKeys.ParametersOf(type)] : []));

    public bool HasStaticConstructor(string id)
    {
        if (!constructed.TryGetValue(id, out var has))
            constructed[id] = has = facts.Of("static constructor", id, () => Find(id) is INamedTypeSymbol type && type.StaticConstructors.Any(constructor => !constructor.IsImplicitlyDeclared));
        return has;
    }

    /// <summary>What runs before the first use of a type: its static initialisers in order, then its static constructor.</summary>
    public IEnumerable<CodeBody> StaticInitialisersOf(string id) =>
        facts.Of("initialisers", id, () => IsRead(id) && Find(id) is INamedTypeSymbol symbol ? BodySource.StaticPlacesOf(symbol) : []).Select(Source.Of).OfType<CodeBody>();

    public bool IsOfType(string id, string wanted) => facts.Of("is", id, wanted, () =>
        Find(id) is INamedTypeSymbol own && Dispatch.BasesOf(own).Any(candidate => TypeKeys.IdOf(candidate) == wanted || TypeKeys.NameOf(candidate) == wanted));

    /// <summary>Whether an exception's type is another one or derives from it.</summary>
    public bool IsException(string thrown, string caught)
    {
        if (thrown == caught)
            return true;
        var type = Find(thrown) as INamedTypeSymbol ?? compilation.GetTypeByMetadataName(thrown);
        return type is not null && Dispatch.BasesOf(type).Any(candidate => TypeKeys.IdOf(candidate) == caught || TypeKeys.PlainNameOf(candidate) == caught);
    }

    /// <summary>The user's own code that tells whether an object equals another value.</summary>
    public CodeBody? EqualsOf(UserType type) => Body("equals", type.Id, "", () => Find(type.Id) is INamedTypeSymbol symbol ? OwnEquals(symbol) : null);

    /// <summary>The user's own code of <c>==</c> for two objects of a type.</summary>
    public CodeBody? EqualityOf(UserType type) => Body("equality", type.Id, "", () => Find(type.Id) is INamedTypeSymbol symbol
        ? Dispatch.BasesOf(symbol).SelectMany(candidate => candidate.GetMembers(WellKnownMemberNames.EqualityOperatorName)).OfType<IMethodSymbol>().FirstOrDefault(method => !method.IsImplicitlyDeclared)
        : null);

    /// <summary>The record above a record which says when two of them are equal; none where the type does so itself.</summary>
    public UserType? RecordThatSaysEqualityOf(UserType type) =>
        Find(type.Id) is INamedTypeSymbol { IsRecord: true } symbol && OwnEquals(symbol)?.ContainingType is { } above && TypeKeys.IdOf(above) is var id && id != type.Id ? TypeOf(id) : null;

    public bool IsRecord(UserType type) => Find(type.Id) is INamedTypeSymbol { IsRecord: true };

    private static IMethodSymbol? OwnEquals(INamedTypeSymbol type)
    {
        for (var candidate = type; candidate is not null && TypeKeys.IsOfUser(candidate); candidate = candidate.BaseType)
        {
            var own = candidate.GetMembers().OfType<IMethodSymbol>().Where(method => !method.IsImplicitlyDeclared && !method.IsStatic && method.Parameters.Length == 1
                && (method.Name == "Equals" || method.ExplicitInterfaceImplementations.Any(implemented => implemented.Name == "Equals"))).ToList();
            if (own.Find(method => SymbolEqualityComparer.Default.Equals(method.Parameters[0].Type, candidate)) is { } typed && (candidate.IsRecord || IsEquatable(candidate)))
                return typed;
            if (own.Find(method => method.Parameters[0].Type.SpecialType == SpecialType.System_Object) is { } plain)
                return plain;
        }

        return null;
    }

    private static bool IsEquatable(INamedTypeSymbol type) => type.AllInterfaces.Any(candidate =>
        candidate.MetadataName == "IEquatable`1" && SymbolEqualityComparer.Default.Equals(candidate.TypeArguments[0], type));

    /// <summary>The user's own code that makes an object's text. A record below one with such code writes its own text again.</summary>
    public CodeBody? ToStringOf(UserType type)
    {
        for (var candidate = Find(type.Id) as INamedTypeSymbol; candidate is not null && TypeKeys.IsOfUser(candidate); candidate = candidate.BaseType)
        {
            if (candidate.GetMembers("ToString").OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.IsEmpty && !method.IsImplicitlyDeclared) is { } found)
                return !candidate.IsRecord || found.IsSealed || TypeKeys.IdOf(candidate) == type.Id ? BodyOf(found) : null;
        }

        return null;
    }

    /// <summary>The user's own code that makes an object's text in a format.</summary>
    public CodeBody? FormatterOf(UserType type) => Find(type.Id) is INamedTypeSymbol symbol && symbol.AllInterfaces.FirstOrDefault(candidate => candidate.MetadataName == "IFormattable") is { } formattable
        && symbol.FindImplementationForInterfaceMember(formattable.GetMembers("ToString")[0]) is IMethodSymbol method ? BodyOf(method) : null;

    /// <summary>Whether a record's own code writes what its text shows.</summary>
    public bool PrintsItself(UserType type) => Find(type.Id) is INamedTypeSymbol { IsRecord: true } record
        && Dispatch.BasesOf(record).TakeWhile(part => part.IsRecord).Any(part => part.GetMembers("PrintMembers").Any(method => !method.IsImplicitlyDeclared));

    /// <summary>What the text of a record or anonymous object shows, in order; none where the text isn't made that way.</summary>
    public IReadOnlyList<(string Name, string Field, CodeBody? Getter)>? PrintedMembersOf(UserType type)
    {
        if (type.Id.StartsWith("anonymous ", StringComparison.Ordinal))
            return [.. type.Fields.Select(field => (field, field, (CodeBody?)null))];
        if (Find(type.Id) is not INamedTypeSymbol { IsRecord: true } record)
            return null;
        var printed = new List<(string, string, CodeBody?)>();
        foreach (var part in Dispatch.BasesOf(record).TakeWhile(candidate => candidate.IsRecord).Reverse())
        {
            foreach (var member in part.GetMembers().Where(member => member is { IsStatic: false, DeclaredAccessibility: Accessibility.Public }))
            {
                if (member is IFieldSymbol field)
                    printed.Add((field.Name, Members.IdOf(field), null));
                else if (member is IPropertySymbol { IsOverride: false, IsIndexer: false, GetMethod: { } getter } property)
                    printed.Add((property.Name, Members.IdOf(property), Members.IsPlainAuto(property) ? null : BodyFor(type, TypeKeys.MethodOf(getter)) ?? BodyOf(getter)));
            }
        }

        return printed;
    }

    /// <summary>The user's own code that others can run who are handed an object: what it overrides or implements of theirs, and its properties.</summary>
    public IEnumerable<CodeBody> ExposedMembersOf(UserType type) => facts.Of("exposed", type.Id, "", () => (IReadOnlyList<BodyPlace>)(Find(type.Id) is INamedTypeSymbol symbol
            ? [.. Dispatch.ExposedMembersOf(symbol).Select(method => PlaceOf(method.OriginalDefinition)).OfType<BodyPlace>()]
            : []), places => places.All(IsFound)).Select(Source.Of).OfType<CodeBody>();

    /// <summary>The name that an object has as text if its type says nothing else.</summary>
    public string? FullNameOf(UserType type)
    {
        if (Find(type.Id) is not INamedTypeSymbol { IsGenericType: false } symbol || symbol.IsFileLocal || Dispatch.BasesOf(symbol).Any(candidate => candidate.SpecialType is SpecialType.None && !TypeKeys.IsOfUser(candidate) && candidate.TypeKind == TypeKind.Class))
            return null;
        var name = symbol.MetadataName;
        var outer = symbol.ContainingType;
        for (; outer is not null; outer = outer.ContainingType)
            name = outer.MetadataName + "+" + name;
        return symbol.ContainingNamespace is { IsGlobalNamespace: false } space ? space.ToDisplayString() + "." + name : name;
    }

    /// <summary>The code that hands out an object's enumerator: its own method, else that of an interface.</summary>
    public CodeBody? EnumeratorOf(UserType type) => MethodNamed(type, "GetEnumerator", parameters: 0)
        ?? ImplementationOf(type, "IEnumerable`1", "GetEnumerator") ?? MethodNamed(type, "GetAsyncEnumerator", parameters: 0) ?? ImplementationOf(type, "IEnumerable", "GetEnumerator");

    /// <summary>How an enumerator of the user's own moves on, and where its current item is; none where it is no enumerator.</summary>
    public (CodeBody MoveNext, CodeBody? Current, string Field, CodeBody? Dispose)? MoverOf(UserType type)
    {
        if ((MethodNamed(type, "MoveNext", parameters: 0) ?? ImplementationOf(type, "IEnumerator", "MoveNext")) is not { } moveNext)
            return null;
        var property = Dispatch.BasesOf((INamedTypeSymbol)Find(type.Id)!).Select(candidate => candidate.GetMembers("Current").OfType<IPropertySymbol>().FirstOrDefault()).FirstOrDefault(found => found is not null);
        var current = property is null ? ImplementationOf(type, "IEnumerator`1", "get_Current") : Members.IsPlainAuto(property) ? null : property.GetMethod is { } getter ? BodyFor(type, TypeKeys.MethodOf(getter)) ?? BodyOf(getter) : null;
        return (moveNext, current, property is null ? "" : Members.IdOf(property), MethodNamed(type, "Dispose", parameters: 0));
    }

    private CodeBody? ImplementationOf(UserType type, string contract, string member) => Find(type.Id) is INamedTypeSymbol symbol
        && symbol.AllInterfaces.FirstOrDefault(candidate => candidate.MetadataName == contract) is { } implemented
        && implemented.GetMembers(member).FirstOrDefault() is { } declared
        && symbol.FindImplementationForInterfaceMember(declared) is IMethodSymbol method ? BodyOf(method) : null;

    public CodeBody? DeconstructorOf(UserType type) => Find(type.Id) is INamedTypeSymbol symbol
        && symbol.GetMembers("Deconstruct").OfType<IMethodSymbol>().FirstOrDefault(method => !method.IsImplicitlyDeclared) is { } found ? BodyOf(found) : null;

    /// <summary>The fields behind the parameters of a record, in order.</summary>
    public IReadOnlyList<string>? PartsOf(UserType type)
    {
        if (type.Id.StartsWith("anonymous ", StringComparison.Ordinal))
            return type.Fields;
        return Find(type.Id) is INamedTypeSymbol { IsRecord: true } record && BodySource.PrimaryConstructorOf(record) is { } primary
            ? [.. primary.Parameters.Select(parameter => Dispatch.BasesOf(record).SelectMany(candidate => candidate.GetMembers(parameter.Name)).OfType<IPropertySymbol>().FirstOrDefault() is { } property ? Members.IdOf(property) : "")]
            : null;
    }

    private CodeBody? MethodNamed(UserType type, string name, int parameters)
    {
        for (var candidate = Find(type.Id) as INamedTypeSymbol; candidate is not null; candidate = candidate.BaseType)
        {
            if (!TypeKeys.IsOfUser(candidate))
                return null;
            if (candidate.GetMembers(name).OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.Length == parameters && !method.IsImplicitlyDeclared) is { } found)
                return BodyOf(found);
        }

        return null;
    }

    private ISymbol? Find(string id)
    {
        Budget.Current.Ask();
        if (!symbols.TryGetValue(id, out var symbol))
            symbols[id] = symbol = Ids.FindMethod(id, Find) ?? Ids.Find(id, compilation);
        return symbol;
    }
}
