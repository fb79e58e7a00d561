using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>Reads a rig definition, or a helper that no definition reaches, path by path.</summary>
internal static class RigReader
{
    public static ReadingResult ReadDefinition(RigEntry definition, Program program, Conventions conventions, Budget budget) =>
        Read($"the rig '{definition.Name}'", definition.Define, program, conventions, budget, machine =>
        {
            var self = New(machine, definition);
            var body = machine.Program.BodyFor(self.Type, definition.Define) ?? machine.Program.BodyOf(definition.Define);
            if (body is { IsAsync: true })
                throw new ThrownByCode(typeof(InvalidOperationException).FullName!, Rig.AsyncDefine(definition.Name));
            if (body is not null)
                machine.Call(body, self, [machine.Draft]);
            machine.MayRunKept();
        });

    /// <summary>Reads a method with parameters of which only the types are known: what it finds holds for every caller.</summary>
    public static ReadingResult ReadHelper(IMethodSymbol helper, Program program, Conventions conventions, Budget budget) =>
        Read($"the helper '{helper.Name}'", TypeKeys.MethodOf(helper), program, conventions, budget, machine =>
        {
            machine.Draft.Record(new PartBegun());
            var body = machine.Program.BodyOf(helper);
            object? self = helper.IsStatic ? null : new OpenValue(TypeKeys.Of(helper.ContainingType));
            var arguments = helper.Parameters.Select(parameter => Opens.Of(TypeKeys.Of(parameter.Type), machine, canFork: true));
            if (body is { IsIterator: false })
                machine.Call(body, self, [.. arguments.Select((value, index) => helper.Parameters[index].RefKind is RefKind.Ref or RefKind.Out ? new Cell([value], 0) : value)]);
        });

    private static ReadingResult Read(string subject, MethodRef entry, Program program, Conventions conventions, Budget budget, Action<Machine> run) =>
        budget.Run(() =>
        {
            IReadOnlyList<ReadPath> Read() => Paths(entry, budget, run, decisions => new Machine(subject, program, new RigDraft(conventions, new ProgramPlaces()), decisions, budget));
            var paths = Read();
            while (program.SetOutside.FindsMore())
                paths = Read();
            return new ReadingResult(paths, [.. program.Source.Files], [.. program.Source.Methods]);
        });

    private static IReadOnlyList<ReadPath> Paths(MethodRef entry, Budget budget, Action<Machine> run, Func<Decisions, Machine> begin)
    {
        var ends = new List<(Machine Machine, Stop? Stop)>();
        var decisions = new Decisions();
        do
        {
            decisions.Restart();
            budget.BeginPath();
            var machine = begin(decisions);
            ends.Add((machine, Run(machine, run)));
        }
        while (decisions.Advance());

        var built = ends.FindAll(end => end.Stop is not { IsFailure: true });
        if (decisions.LeftOut is { } leftOut)
        {
            // On one of those there may be a rig even if there is none on the others.
            if (built.Count == 0)
                built.Add((ends[0].Machine, null));
            var at = leftOut.At.At.Path.Length > 0 ? leftOut.At : new CodePlace(ends[0].Machine.Program.PlaceOf(entry), []);
            built[0].Machine.Miss(built[0].Machine.Draft, at, leftOut.Reason);
        }

        // Whichever way it goes, the code throws.
        if (built.Count == 0)
            built.Add(ends[0]);
        return built.ConvertAll(end => Finish(end.Machine, end.Stop, entry, isWhole: decisions.LeftOut is null));
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
            return new Stop(thrown.Message.Length > 0 ? Messages.OfRefusal(thrown.Message) : thrown.Type, IsFailure: true, thrown.Place);
        }
        catch (ReadingStopped stopped)
        {
            return new Stop(stopped.Message, IsFailure: false, stopped.At is { } at ? new CodePlace(at, []) : machine.LastPlace);
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

    private static ReadPath Finish(Machine machine, Stop? stop, MethodRef entry, bool isWhole)
    {
        if (stop is not null)
        {
            machine.Draft.Log.Scope = 0;
            machine.Miss(machine.Draft, stop.At ?? new CodePlace(machine.Program.PlaceOf(entry), []), stop.Reason, stop.IsFailure);
            machine.Draft.Record(new AllTouched());
        }

        return new ReadPath(machine.Draft.Log, RigModel.Of(machine.Draft.Log, machine.Budget.Cancellation), machine.Places, machine.Calls) { EndsEarly = !isWhole || stop is { IsFailure: false } };
    }

    private static ObjectValue New(Machine machine, RigEntry definition)
    {
        var type = machine.Program.TypeOf(definition.Id) ?? throw new ReadingStopped($"the type '{definition.Name}' has no source");
        machine.Use(definition.Type);
        var self = type.New(machine);
        if (machine.OneOf(machine.Program.ConstructorsOf(definition)) is { } constructor && machine.Program.BodyOf(constructor) is { } body)
            machine.Call(body, self, [.. constructor.Parameters.Select(parameter => Opens.Of(parameter, machine, canFork: true))]);
        machine.OpenSet([self]);
        return self;
    }

    private sealed record Stop(string Reason, bool IsFailure, CodePlace? At);
}
