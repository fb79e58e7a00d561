using Modelling.Geometry;

namespace Modelling.Anatomy;

/// <summary>The joints in the order of the file: parents before children.</summary>
public sealed class JointTree
{
    private const string Left = "_left";
    private const string Right = "_right";

    private readonly List<ModelJoint> _all = [];
    private readonly Dictionary<string, ModelJoint> _byName = [];

    public IReadOnlyList<ModelJoint> All => _all;

    public IEnumerable<ModelJoint> Skinned => _all.Where(joint => joint.MovesSkin);

    public ModelJoint this[string name] => _byName[name];

    public ModelJoint Add(string name, ModelJoint? parent, Frame world, bool movesSkin = true)
    {
        var joint = new ModelJoint(_all.Count, name, parent, world, movesSkin);
        _all.Add(joint);
        _byName.Add(name, joint);
        return joint;
    }

    public ModelJoint Mirror(ModelJoint joint) => _byName.GetValueOrDefault(Other(joint.Name), joint);

    /// <summary>Adds the right side of every joint of the left.</summary>
    public void AddRightSide()
    {
        foreach (var left in _all.Where(joint => joint.Name.EndsWith(Left, StringComparison.Ordinal)).ToArray())
            Add(Other(left.Name), Mirror(left.Parent!), left.World.Mirrored, left.MovesSkin);
    }

    private static string Other(string name) =>
        name.EndsWith(Left, StringComparison.Ordinal) ? name[..^Left.Length] + Right : name;
}
