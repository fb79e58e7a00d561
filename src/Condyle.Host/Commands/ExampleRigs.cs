using Condyle.Host.Catalogue;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Names of the project's rigs for examples and completion. What is wrong with a rig is not said here: one is asked for something else.</summary>
internal sealed class ExampleRigs(Surroundings surroundings)
{
    public IEnumerable<string> Names => Rigs.Select(rig => rig.Name);

    private IReadOnlyList<RigEntry> Rigs
    {
        get
        {
            try
            {
                return RigCatalogue.Of(surroundings).Rigs;
            }
            catch (BadInputException)
            {
                return [];
            }
        }
    }

    /// <summary>The first rig that an actor's motion may go onto: it has limbs, and joints of these names.</summary>
    public string? ForActor(IReadOnlyCollection<string> joints) => Rigs.FirstOrDefault(rig => CanAct(rig, joints))?.Name;

    private static bool CanAct(RigEntry entry, IReadOnlyCollection<string> joints)
    {
        try
        {
            var rig = entry.Compile(entry.Examine());
            return rig.Limbs.Count > 0 && joints.All(rig.Joints.Select(joint => joint.Name).ToHashSet(StringComparer.Ordinal).Contains);
        }
        catch (RigFailure)
        {
            return false;
        }
    }
}
