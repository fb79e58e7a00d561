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
    public Rig Examine()
    {
        try
        {
            return Rig.Examine((IRigDefinition)Activator.CreateInstance(definition)!);
        }
        catch (Exception problem)
        {
            var (line, cause) = ProjectFault.Of(problem, definition.Assembly);
            throw new RigFailure($"The rig '{Name}' can't be built: {line}", cause);
        }
    }

    /// <exception cref="RigFailure">The rig can't be put into an order of evaluation.</exception>
    public CompiledRig Compile(Rig rig)
    {
        try
        {
            return RigCompiler.Compile(rig);
        }
        catch (Exception problem) when (problem is RigCompileException or RigGeometryException)
        {
            throw new RigFailure(problem.Message.ReplaceLineEndings(" ") + PlaceOf(problem as RigGeometryException ?? problem.InnerException as RigGeometryException, rig), problem);
        }
    }

    /// <summary>The project's clips of this rig, in the order of the names of their classes.</summary>
    public ProjectClips Clips() => ProjectClips.Of(clipSources);

    /// <summary>The built-in range of motion, where there is something to show, and the project's clips.</summary>
    public ProjectClips ClipsWithRange(CompiledRig compiled) => ProjectClips.Of(clipSources, RangeOfMotion.Find(compiled));

    /// <summary>Where in the code that stands whose numbers can't be; nothing where that is no single sentence.</summary>
    private static string PlaceOf(RigGeometryException? fault, Rig rig) =>
        fault?.Faults.Select(each => each.About).OfType<RigElement>().Select(about => rig.Places.Find(about.Place)).FirstOrDefault(line => line is not null) is { } place ? $" ({place.File}:{place.Line})" : "";
}

/// <summary>A rig that can't be built or evaluated: work that failed, told in one line.</summary>
internal sealed class RigFailure(string message, Exception cause) : Exception(message, cause);
