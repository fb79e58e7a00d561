using System.Diagnostics;
using System.Reflection;
using Condyle.Model;
using Condyle.Runtime;

namespace Condyle.Host.Catalogue;

/// <summary>A rig of the project: its definition, where its skeleton was delivered, and its clips.</summary>
internal sealed class RigEntry(Type definition, IReadOnlyList<Type> clipSources)
{
    public string Name => definition.Name;

    /// <summary>The delivered file as the definition names it; none when it names none.</summary>
    public string? SkeletonFile => definition.GetCustomAttribute<SkeletonFileAttribute>()?.Path;

    /// <summary>Where the delivered file lies: what is typed on a command line is meant from the working directory, what stands in code from the program.</summary>
    public string? FindSkeleton(Surroundings surroundings, string? typed) =>
        typed is null && SkeletonFile is { } named && Path.Combine(surroundings.ProgramFolder, named) is var beside && File.Exists(beside) ? beside : typed ?? SkeletonFile;

    /// <summary>The same where there must be one.</summary>
    /// <exception cref="BadInputException">Nobody names one.</exception>
    public string NeedSkeleton(Surroundings surroundings, string? typed) => FindSkeleton(surroundings, typed) ?? throw new BadInputException(
        $"rig '{Name}'", "it isn't known which file its skeleton was delivered in", "Put [SkeletonFile(\"...\")] on its definition, or give --skeleton FILE");

    /// <summary>Runs the definition and checks the rig that it says.</summary>
    /// <exception cref="RigFailure">The definition throws.</exception>
    public Rig Examine() => Run(() => Rig.Examine((IRigDefinition)Activator.CreateInstance(definition)!), "can't be built");

    /// <exception cref="RigFailure">The rig can't be put into an order of evaluation.</exception>
    public CompiledRig Compile(Rig rig)
    {
        try
        {
            return RigCompiler.Compile(rig);
        }
        catch (Exception problem) when (problem is RigCompileException or RigGeometryException)
        {
            throw new RigFailure(problem.Message + PlaceOf(problem as RigGeometryException ?? problem.InnerException as RigGeometryException, rig), problem);
        }
    }

    /// <summary>The project's clips of this rig, in the order of the names of their classes.</summary>
    /// <exception cref="RigFailure">A clip source throws.</exception>
    public IReadOnlyList<Clip> Clips() => Run(
        () => clipSources.SelectMany(source => ((IRigClips)Activator.CreateInstance(source)!).Clips()).ToList(),
        "has clips that can't be made");

    /// <summary>The built-in range of motion, where there is something to show, and the project's clips.</summary>
    /// <exception cref="RigFailure">A clip source throws.</exception>
    public IReadOnlyList<Clip> ClipsWithRange(CompiledRig compiled) => RangeOfMotion.Find(compiled) is { } builtIn ? [builtIn, .. Clips()] : Clips();

    /// <summary>The project's own code runs here: what it throws becomes one line with the place, not a stack trace.</summary>
    private T Run<T>(Func<T> code, string what)
    {
        try
        {
            return code();
        }
        catch (Exception problem) when (problem is not BadInputException)
        {
            var cause = problem;
            while (cause is TargetInvocationException or TypeInitializationException && cause.InnerException is { } inner)
                cause = inner;
            if (cause is BadInputException)
                throw cause;
            var kind = cause is ArgumentException or InvalidOperationException ? "" : $"{cause.GetType().Name}: ";
            throw new RigFailure($"The rig '{Name}' {what}: {kind}{Messages.OnOneLine(Messages.OfRefusal(cause.Message).ReplaceLineEndings(" "))}{PlaceOf(cause)}", cause);
        }
    }

    /// <summary>Where in the code that stands whose numbers can't be; nothing where that is no single sentence.</summary>
    private static string PlaceOf(RigGeometryException? fault, Rig rig) =>
        fault?.Faults.Select(each => each.About).OfType<RigElement>().Select(about => rig.Places.Find(about.Place)).FirstOrDefault(line => line is not null) is { } place ? $" ({place.File}:{place.Line})" : "";

    private string PlaceOf(Exception problem)
    {
        var frame = new StackTrace(problem, fNeedFileInfo: true).GetFrames().FirstOrDefault(frame => frame.GetMethod()?.Module.Assembly == definition.Assembly);
        return frame?.GetFileName() is { } file ? $" ({file}:{frame.GetFileLineNumber()})" : "";
    }
}

/// <summary>A rig that can't be built or evaluated: work that failed, told in one line.</summary>
internal sealed class RigFailure(string message, Exception cause) : Exception(message, cause);
