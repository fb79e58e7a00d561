using System.Reflection;
using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// A public member of Condyle as a reading calls it: by its twin, which takes open values and a place, where it has one; else as it is.
/// A new member is found here by itself.
/// </summary>
internal sealed class DraftMember
{
    private static readonly Dictionary<string, DraftMember> Members = typeof(RigDraft).GetTypeInfo().Assembly.GetTypes()
        .Where(type => type.GetTypeInfo().IsPublic)
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly).Cast<MethodBase>()
            .Concat(type.GetConstructors()))
        .Select(method => new DraftMember(method))
        .GroupBy(member => DocId.Of(member.Called))
        .ToDictionary(group => group.Key, group => group.First());

    private readonly MethodBase target;
    private readonly Func<object?, Machine, object?>[] arguments;
    private readonly Func<object?, object?> result;

    private DraftMember(MethodBase method)
    {
        Called = method;
        var parameters = method.GetParameters();
        Plain = parameters.TakeWhile(parameter => !IsCallerInformation(parameter)).ToArray();
        IsRecipe = method.GetCustomAttribute<RecipeAttribute>() is not null;
        TakesOpen = method.GetCustomAttribute<TakesOpenAttribute>() is not null || PropertyOf(method)?.GetCustomAttribute<TakesOpenAttribute>() is not null;
        var twin = TwinOf(method, Plain);
        HasTwin = twin is not null;
        target = twin ?? method;
        Type[] taken = [.. target.GetParameters().Select(parameter => parameter.ParameterType)];
        TakesPlace = HasTwin && taken.Length > 0 && taken[taken.Length - 1] == typeof(PlaceId);
        arguments = [.. taken.Take(Plain.Length).Select(Marshal.To)];
        result = Marshal.From(target is MethodInfo { ReturnType: var returned } ? returned : target.DeclaringType!);
    }

    public MethodBase Called { get; }

    /// <summary>The parameters that an author gives: all but the compiler's file and line.</summary>
    public ParameterInfo[] Plain { get; }

    public bool HasTwin { get; }

    public bool TakesPlace { get; }

    /// <summary>Whether it gives a right answer for handles of unknown elements.</summary>
    public bool TakesOpen { get; }

    /// <summary>Whether it says many sentences at once, and answers nothing where it would have to guess.</summary>
    public bool IsRecipe { get; }

    public static DraftMember? Find(string id) => Members.TryGetValue(id, out var member) ? member : null;

    /// <summary>Every public member, with the id it is found by.</summary>
    public static IReadOnlyDictionary<string, DraftMember> All => Members;

    /// <summary>What it takes for the interpreter's values.</summary>
    public object?[] Take(object?[] values, Machine machine, object? place)
    {
        var taken = new object?[arguments.Length + (TakesPlace ? 1 : 0)];
        for (var i = 0; i < arguments.Length; i++)
            taken[i] = arguments[i](values[i], machine);
        if (TakesPlace)
            taken[arguments.Length] = place;
        return taken;
    }

    /// <summary>Calls it and gives back its result as one of the interpreter's values.</summary>
    public object? Invoke(object? self, object?[] taken)
    {
        try
        {
            return result(target is ConstructorInfo constructor ? constructor.Invoke(taken) : target.Invoke(self, taken));
        }
        catch (TargetInvocationException failed) when (failed.InnerException is { } inner)
        {
            throw new ThrownByCode(inner.GetType().FullName!, inner.Message);
        }
    }

    private static bool IsCallerInformation(ParameterInfo parameter) =>
        parameter.GetCustomAttribute<CallerFilePathAttribute>() is not null || parameter.GetCustomAttribute<CallerLineNumberAttribute>() is not null;

    private static PropertyInfo? PropertyOf(MethodBase method) => method.IsSpecialName
        ? method.DeclaringType!.GetProperties().FirstOrDefault(property => property.GetMethod == method || property.SetMethod == method)
        : null;

    private static MethodInfo? TwinOf(MethodBase method, ParameterInfo[] plain)
    {
        const BindingFlags Internal = BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        if (PropertyOf(method) is { } property && method.DeclaringType!.GetProperty(property.Name + "Fact", Internal) is var fact)
            return property.GetMethod == method ? fact?.GetMethod : fact?.SetMethod;
        return method.DeclaringType!.GetMethods(Internal).FirstOrDefault(twin =>
            twin.Name == method.Name
            && twin.GetParameters() is var parameters
            && parameters.Length == plain.Length + 1
            && parameters[plain.Length].ParameterType == typeof(PlaceId)
            && plain.Zip(parameters, (p, t) => t.ParameterType == FactOf(p.ParameterType)).All(fits => fits));
    }

    /// <summary>What a twin takes in the place of a plain type: text and facts for values, handles as they are.</summary>
    internal static Type FactOf(Type plain) =>
        plain == typeof(string) ? typeof(Text)
        : plain == typeof(string[]) ? typeof(Fact<Text[]>)
        : plain.Assembly == typeof(RigDraft).Assembly && !plain.IsEnum ? plain
        : plain.IsArray ? plain
        : typeof(Fact<>).MakeGenericType(plain);
}
