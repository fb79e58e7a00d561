namespace Condyle.Analyzers.Reading;

/// <summary>Static fields, and when they are initialised.</summary>
internal sealed partial class Machine
{
    private readonly Dictionary<string, object?[]> statics = [];
    private readonly Dictionary<string, object?[]> initialised = [];
    private readonly Dictionary<string, ThrownByCode> failed = [];

    /// <summary>By its type, the last static field in which a handle was looked for that nobody has put there yet.</summary>
    public Dictionary<Type, string> Unset { get; } = [];

    /// <summary>The static fields that were used.</summary>
    public IEnumerable<object?[]> Statics => statics.Values;

    /// <summary>Where a static field lies. Its type's initialisers run before. A constant whose value doesn't compile lies nowhere.</summary>
    public Cell StaticOf(TypeKey type, string field) =>
        StaticsOf(type) is var values && Program.StaticsOf(type.Id).IndexOf(field) is >= 0 and var index ? new(values, index) : new([OpenValue.Any], 0);

    /// <summary>Runs a type's static constructor before it is used; without one, initialisers wait for the first use of a field.</summary>
    public void Use(TypeKey type)
    {
        if (Program.HasStaticConstructor(type.Id))
            StaticsOf(type);
    }

    private object?[] StaticsOf(TypeKey type)
    {
        var layout = Program.StaticsOf(type.Id);
        var known = Program.TypeOf(type.Id)?.ArgumentsFor(type.Arguments);
        if (!statics.TryGetValue(type.FullId, out var values))
        {
            statics[type.FullId] = values = new object?[layout.Fields.Count];
            for (var i = 0; i < values.Length; i++)
            {
                var field = known is null ? layout.FieldTypes[i] : layout.FieldTypes[i]?.With(known);
                values[i] = Program.IsRead(type.Id) ? Defaults.Of(field, this) : Opens.Of(field, this);
            }
        }

        if (!initialised.TryGetValue(type.FullId, out var begun))
            initialised[type.FullId] = begun = [null];
        if (begun[0] is null)
        {
            var mark = Journal.Position;
            Write(begun, 0, true);
            Initialise(type, known);
            // A type is the same whichever way it is first used on, unless its initialisers do something elsewhere: then each way does that for itself.
            if (Journal.IsWatching)
                Journal.TryTakeAsGiven(mark, Reach.From(Roots.Where(root => !ReferenceEquals(root, values)), budget));
        }

        return failed.TryGetValue(type.FullId, out var failure) ? throw failure : values;
    }

    /// <summary>Opens what whoever builds the rig may have set before, of all objects that can be got at from some values.</summary>
    public void OpenSet(IEnumerable<object?> roots)
    {
        if (!Program.SetOutside.IsPossible)
            return;
        foreach (var own in Reach.From(roots, budget).OfType<ObjectValue>())
            OpenSet(own.Type, own.Fields);
    }

    private void OpenSet(UserType type, object?[] values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            var write = Program.SetOutside.To(type.Fields[i]);
            if (write == OutsideWrite.Contents && values[i] is IStretch)
                Elements.Lose(values[i], this);
            else if (write == OutsideWrite.Contents && ((values[i] as ObjectValue)?.Collection ?? values[i]) is ICollectionValue collection)
            {
                if (collection is not CollectionValue { IsFixed: true })
                    Journal.Open(collection);
            }
            else if (write != OutsideWrite.None)
                Write(values, i, Opens.Of(type.FieldTypes[i], this, canFork: true));
        }
    }

    /// <summary>A type whose initialisers throw can't be used from then on: each use throws the same.</summary>
    private void Initialise(TypeKey type, IReadOnlyDictionary<string, TypeKey>? known)
    {
        try
        {
            foreach (var body in Program.StaticInitialisersOf(type.Id))
                Call(body, null, [], known);
            if (Program.SetOutside.IsPossible)
                OpenSet(Program.StaticsOf(type.Id), statics[type.FullId]);
            OpenSet(statics[type.FullId]);
        }
        catch (ThrownByCode thrown)
        {
            const string failure = "System.TypeInitializationException";
            var inner = thrown.Value ?? ExceptionValue.OfFramework(thrown.Type);
            failed[type.FullId] = new ThrownByCode(failure, $"The initialisers of '{type.Id}' throw.", new ExceptionValue(failure, [TextValue.Open, inner])) { Place = thrown.Place };
        }
    }
}
