using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>Reads a rig definition, or a helper that no definition reaches, path by path.</summary>
internal static class RigReader
{
    public static ReadingResult ReadDefinition(RigEntry definition, Program program, Conventions conventions, Budget budget) =>
        Read(definition.Name, definition.Define, program, conventions, budget, machine =>
        {
            var self = New(machine, definition);
            var body = machine.Program.BodyFor(self.Type, definition.Define) ?? machine.Program.BodyOf(definition.Define);
            if (body is not null)
                machine.Call(body, self, [machine.Draft]);
        });

    /// <summary>Reads a method with parameters of which only the types are known: what it finds holds for every caller.</summary>
    public static ReadingResult ReadHelper(IMethodSymbol helper, Program program, Conventions conventions, Budget budget) =>
        Read(helper.Name, TypeKeys.MethodOf(helper), program, conventions, budget, machine =>
        {
            var body = machine.Program.BodyOf(helper);
            object? self = helper.IsStatic ? null : new OpenValue(TypeKeys.Of(helper.ContainingType));
            var arguments = helper.Parameters.Select(parameter => Opens.Of(TypeKeys.Of(parameter.Type), machine, canFork: true));
            if (body is { IsIterator: false })
                machine.Call(body, self, [.. arguments.Select((value, index) => helper.Parameters[index].RefKind is RefKind.Ref or RefKind.Out ? new Cell([value], 0) : value)]);
        });

    private static ReadingResult Read(string name, MethodRef entry, Program program, Conventions conventions, Budget budget, Action<Machine> run) =>
        budget.Run(() => new ReadingResult(name, Paths(entry, program, conventions, budget, run), [.. program.Source.Files], [.. program.Source.Methods]));

    private static List<ReadPath> Paths(MethodRef entry, Program program, Conventions conventions, Budget budget, Action<Machine> run)
    {
        var paths = new List<ReadPath>();
        var decisions = new Decisions();
        string? failure = null;
        do
        {
            decisions.Restart();
            budget.BeginPath();
            var machine = new Machine(program, new RigDraft(conventions, new ProgramPlaces()), decisions, budget);
            var fails = Run(machine, run);
            if (fails is not null && fails.IsFailure)
                failure ??= fails.Reason;
            else
                paths.Add(Finish(machine, fails, entry));
        }
        while (decisions.Advance());

        if (paths.Count == 0 && failure is not null)
        {
            // Whichever way it goes, the code throws.
            decisions = new Decisions();
            budget.BeginPath();
            var machine = new Machine(program, new RigDraft(conventions, new ProgramPlaces()), decisions, budget);
            paths.Add(Finish(machine, Run(machine, run), entry));
        }

        return paths;
    }

    private static Stop? Run(Machine machine, Action<Machine> run)
    {
        try
        {
            run(machine);
            return null;
        }
        catch (ThrownByCode thrown)
        {
            return new Stop(thrown.Message.Length > 0 ? thrown.Message : thrown.Type, IsFailure: true, thrown.Place);
        }
        catch (ReadingStopped stopped)
        {
            return new Stop(stopped.Message, IsFailure: false, stopped.At ?? machine.LastPlace);
        }
        catch (AnswerIsOpen open)
        {
            return new Stop(open.Message, IsFailure: false, machine.LastPlace);
        }
#pragma warning disable CA1031 // A reading must never take the compiler down: what it didn't expect is reported as code that wasn't read.
        catch (Exception unexpected) when (unexpected is not OperationCanceledException)
#pragma warning restore CA1031
        {
            return new Stop($"the reader failed with {unexpected.GetType().Name} in {WhereIn(unexpected)}: {unexpected.Message}", IsFailure: false, machine.LastPlace);
        }
    }

    // For those who mend the reader: the innermost of its own methods that was running.
    private static string WhereIn(Exception unexpected) =>
        unexpected.StackTrace?.Split('\n').Select(line => line.Trim()).FirstOrDefault(line => line.Contains(typeof(RigReader).Namespace!)) ?? "an unknown place";

    private static ReadPath Finish(Machine machine, Stop? stop, MethodRef entry)
    {
        if (stop is not null)
        {
            var at = stop.At ?? machine.Program.PlaceOf(entry);
            machine.Draft.Log.Scope = 0;
            machine.Draft.Record(new Gap(machine.Places.At(at), stop.Reason, stop.IsFailure));
            machine.Draft.Record(new AllTouched());
        }

        return new ReadPath(RigModel.Of(machine.Draft.Log, machine.Budget.Cancellation), machine.Places, machine.Calls) { EndsEarly = stop is { IsFailure: false } };
    }

    private static ObjectValue New(Machine machine, RigEntry definition)
    {
        var type = machine.Program.TypeOf(definition.Id) ?? throw new ReadingStopped($"the type '{definition.Name}' has no source");
        machine.Use(definition.Type);
        var self = type.New(machine);
        if (definition.Constructor is { } constructor && machine.Program.BodyOf(constructor) is { } body)
            machine.Call(body, self, [.. constructor.Parameters.Select(parameter => Opens.Of(parameter, machine, canFork: true))]);
        return self;
    }

    private sealed record Stop(string Reason, bool IsFailure, Origin? At);
}
