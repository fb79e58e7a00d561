using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A bone between two exported joints that switches hand over from one source to another, and the blend that moves its end.</summary>
internal sealed record BlendedBone(RigBlend Blend, RigNode From, RigNode To);

/// <summary>Bones that go over together: those of a blended chain, or of joints below each other that are blended one by one by the same switches.</summary>
internal sealed class BlendedLimb
{
    private readonly SortedSet<int> variables = [];

    private BlendedLimb()
    {
    }

    public List<BlendedBone> Bones { get; } = [];

    /// <summary>The switches, and options of choices, that hand it over.</summary>
    public IReadOnlyCollection<int> Variables => variables;

    /// <summary>The limbs of a rig. Blends whose weights don't add up to one are another rule's.</summary>
    public static IReadOnlyList<BlendedLimb> In(CheckedRig rig)
    {
        var model = rig.Model;
        var limbs = new List<BlendedLimb>();
        var alone = new Dictionary<int, RigBlend>();
        var uses = UsesOfVariables(model);
        foreach (var blend in model.Blends)
        {
            if (VariablesOf(blend).Count == 0 || !rig.Sums.IsOne(blend))
                continue;
            if (blend.Node is { IsExported: true } node)
                alone[node.Id] = blend;
            else if (blend.Chain is not null && !IsSafe(blend, uses))
                limbs.Add(OfChain(blend));
        }

        var ofJoint = new Dictionary<int, BlendedLimb>();
        foreach (var joint in alone.Count == 0 ? [] : model.Nodes)
        {
            if (!alone.TryGetValue(joint.Id, out var blend))
                continue;
            var limb = Above(joint) is { } parent && alone.TryGetValue(parent.Id, out var above) && VariablesOf(above).Overlaps(VariablesOf(blend))
                ? ofJoint[parent.Id].With(new BlendedBone(blend, parent, joint))
                : new BlendedLimb();
            ofJoint[joint.Id] = limb;
        }

        return [.. limbs.Concat(ofJoint.Values.Distinct()).Where(limb => limb.Bones.Count > 0)];
    }

    /// <summary>The joint above; twist joints between don't matter.</summary>
    private static RigNode? Above(RigNode joint) => joint.Above.FirstOrDefault(above => !above.Role.TryKnown(out var role) || role != JointRole.Twist);

    // Between two copies that the switches don't move, a chain goes the shortest way and keeps its bones: nothing of that needs to be evaluated.
    private static bool IsSafe(RigBlend blend, ILookup<int, RigElement> uses) =>
        blend.Sources.Count <= 2 && VariablesOf(blend).All(variable => uses[variable].All(sentence => sentence == blend));

    private static ILookup<int, RigElement> UsesOfVariables(RigModel model)
    {
        var uses = new List<(int Variable, RigElement By)>();
        foreach (var blend in model.Blends)
            uses.AddRange(VariablesOf(blend).Select(variable => (variable, (RigElement)blend)));
        foreach (var solver in model.TwoBones)
            uses.AddRange((solver.Stretch.TryKnown(out var stretch) ? stretch?.Weight.Switches ?? [] : []).Select(variable => (variable, (RigElement)solver)));
        foreach (var curve in model.Curves)
            uses.AddRange((curve.Stretch.TryKnown(out var stretch) ? stretch?.Switches ?? [] : []).Select(variable => (variable, (RigElement)curve)));
        foreach (var space in model.Spaces)
            uses.AddRange((space.Choice?.Options ?? []).Select(option => (option.Id, (RigElement)space)));
        foreach (var response in model.Responses)
        {
            if (response.Source is { } source)
                uses.Add((source.Id, response));
        }

        return uses.ToLookup(use => use.Variable, use => use.By);
    }

    private static HashSet<int> VariablesOf(RigBlend blend) =>
        [.. blend.Sources.SelectMany(source => source.Weight.TryKnown(out var weight) ? weight.Switches : [])];

    private static BlendedLimb OfChain(RigBlend blend)
    {
        var limb = new BlendedLimb();
        var joints = new BlendedChain(blend).Joints;
        for (var i = 1; i < joints.Count; i++)
            limb.With(new BlendedBone(blend, joints[i - 1], joints[i]));
        return limb;
    }

    private BlendedLimb With(BlendedBone bone)
    {
        Bones.Add(bone);
        variables.UnionWith(VariablesOf(bone.Blend));
        return this;
    }
}
