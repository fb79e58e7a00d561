using System.Reflection;
using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle;

/// <summary>A rig that was built: checked, and ready to be compiled and evaluated.</summary>
public sealed class Rig
{
    private Rig(string name, RigModel model, ProgramPlaces places, IReadOnlyList<RigFinding> findings)
    {
        Name = name;
        Model = model;
        Places = places;
        Findings = findings;
    }

    /// <summary>The name of the definition's class.</summary>
    public string Name { get; }

    /// <summary>What the rules found, less what the code accepts.</summary>
    public IReadOnlyList<RigFinding> Findings { get; }

    internal RigModel Model { get; }

    internal ProgramPlaces Places { get; }

    /// <summary>Runs a definition and checks the rig that it says. The team's conventions come from the definition's assembly.</summary>
    /// <param name="definition">The rig as code.</param>
    /// <returns>The rig; it may have findings that are no errors.</returns>
    /// <exception cref="RigException">The rules found errors; the exception lists them all.</exception>
    /// <exception cref="InvalidOperationException">Its <c>Define</c> is async.</exception>
    public static Rig Build(IRigDefinition definition)
    {
        var rig = Examine(definition);
        var errors = rig.Findings.Where(finding => finding.Severity == Severity.Error).ToList();
        return errors.Count == 0 ? rig : throw new RigException(rig.Name, errors);
    }

    /// <summary>As <see cref="Build"/>, but gives back a rig with errors too: for a report of them.</summary>
    /// <param name="definition">The rig as code.</param>
    /// <returns>The rig with all its findings.</returns>
    /// <exception cref="InvalidOperationException">Its <c>Define</c> is async.</exception>
    public static Rig Examine(IRigDefinition definition)
    {
        if (definition is null)
            throw new ArgumentNullException(nameof(definition));
        var type = definition.GetType();
        if (IsAsync(type))
            throw new InvalidOperationException(AsyncDefine(type.Name));
        var conventions = Conventions.Of(type.GetTypeInfo().Assembly);
        var places = new ProgramPlaces();
        var draft = new RigDraft(conventions, places);
        definition.Define(draft);
        draft.Close();
        var model = RigModel.Of(draft.Log);
        var findings = RuleBook.Check(model, conventions).Select(finding => new RigFinding(finding, places)).ToList();
        return new Rig(type.Name, model, places, findings);
    }

    /// <summary>What is wrong with a definition whose <c>Define</c> is async: what it throws nobody can catch, and what it says after it has waited comes too late.</summary>
    internal static string AsyncDefine(string name) =>
        $"Define of '{name}' is async, and a rig is built when Define returns. Take 'async' away; wait for what it needs before the rig is built.";

    private static bool IsAsync(Type definition) => definition.GetTypeInfo().GetRuntimeInterfaceMap(typeof(IRigDefinition)).TargetMethods
        .Any(method => method.GetCustomAttribute<AsyncStateMachineAttribute>() is not null);
}
