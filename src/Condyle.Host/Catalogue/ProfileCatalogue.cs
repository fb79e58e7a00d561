using Condyle.Host.Commands;
using Condyle.Runtime;

namespace Condyle.Host.Catalogue;

/// <summary>The engine profiles of a program.</summary>
internal static class ProfileCatalogue
{
    /// <exception cref="BadInputException">There is no such profile, or there are two.</exception>
    public static EngineProfile Choose(Surroundings surroundings, string name)
    {
        List<EngineProfile> profiles = [.. surroundings.Types
            .Where(type => typeof(IEngineProfiles).IsAssignableFrom(type) && type is { IsAbstract: false, ContainsGenericParameters: false } && type.GetConstructor(Type.EmptyTypes) is not null)
            .OrderBy(type => type.FullName, StringComparer.Ordinal)
            .SelectMany(type => ((IEngineProfiles)Activator.CreateInstance(type)!).Profiles())];
        return profiles.Where(profile => profile.Name == name).ToList() switch
        {
            [var only] => only,
            [] when profiles.Count == 0 => throw new BadInputException("--profile", "is no profile of this project, which has none", "Add a public class that implements IEngineProfiles and has a constructor without parameters", name),
            [] => throw new BadInputException("--profile", "is no profile of this project", Nearest.To(name, profiles.Select(profile => profile.Name)), name),
            _ => throw new BadInputException("--profile", "two profiles have this name", "Give each its own", name),
        };
    }
}
