using Condyle.Host.Commands;
using Condyle.Runtime;

namespace Condyle.Host.Catalogue;

/// <summary>The rigs of a program: every public definition with a constructor without parameters, in the order of their names.</summary>
internal sealed class RigCatalogue
{
    private RigCatalogue(IReadOnlyList<RigEntry> rigs) => Rigs = rigs;

    public IReadOnlyList<RigEntry> Rigs { get; }

    /// <exception cref="BadInputException">There is no rig, or two have one name.</exception>
    public static RigCatalogue Of(Surroundings surroundings)
    {
        var made = surroundings.Types.Where(type => type is { IsAbstract: false, ContainsGenericParameters: false } && (type.IsValueType || type.GetConstructor(Type.EmptyTypes) is not null)).ToList();
        var clips = made.Where(type => typeof(IRigClips).IsAssignableFrom(type)).OrderBy(type => type.FullName, StringComparer.Ordinal).ToList();
        List<RigEntry> rigs = [.. made
            .Where(type => typeof(IRigDefinition).IsAssignableFrom(type))
            .OrderBy(type => type.Name, StringComparer.Ordinal)
            .Select(type => new RigEntry(type, [.. clips.Where(source => typeof(IClipsFor<>).MakeGenericType(type).IsAssignableFrom(source))]))];

        if (rigs.Count == 0)
            throw new BadInputException(surroundings.Program, "it has no rig", "Add a public class that implements IRigDefinition and has a constructor without parameters");
        if (rigs.GroupBy(rig => rig.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(group => group.Count() > 1) is { Key: var twice })
            throw new BadInputException(surroundings.Program, $"two rigs are named '{twice}', letter case aside", "Give each its own name: it names the file that is written");
        return new RigCatalogue(rigs);
    }

    /// <summary>Whether a rig has this name.</summary>
    public bool Has(string name) => Named(name) is not null;

    /// <summary>The rig of this name, or all of them where no name is given.</summary>
    /// <exception cref="BadInputException">There is no such rig.</exception>
    public IReadOnlyList<RigEntry> Choose(string? name)
    {
        if (name is null)
            return Rigs;
        return Named(name) is { } found
            ? [found]
            : throw new BadInputException("--rig", "is no rig of this project", Nearest.To(name, Rigs.Select(rig => rig.Name)), name);
    }

    private RigEntry? Named(string name) => Rigs.FirstOrDefault(rig => rig.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
}
