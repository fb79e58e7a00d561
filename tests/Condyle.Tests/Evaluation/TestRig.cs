using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Tests.Evaluation;

/// <summary>A rig said with the public authoring API, its rest, and its nodes by name.</summary>
internal sealed class TestRig
{
    public TestRig(Action<RigDraft> define)
    {
        Model = ModelOf(define);
        Rest = RestPose.Of(Model);
    }

    public RigModel Model { get; }

    public RestPose Rest { get; }

    public RigNode this[string name] => Model.Nodes.Single(node => node.Name.ToString() == name);

    public IEnumerable<RigNode> Joints => Model.Nodes.Where(node => node.IsExported);

    public static RigModel ModelOf(Action<RigDraft> define)
    {
        var draft = new RigDraft(Conventions.Default, new ProgramPlaces());
        define(draft);
        return RigModel.Of(draft.Log);
    }

    public int SwitchId(string name) => Model.Switches.Single(given => given.Name.ToString() == name).Id;

    public ReferencePose Evaluate(Pose? pose = null) => ReferenceEvaluator.Evaluate(Model, Rest, pose ?? new Pose());

    /// <summary>Channels that move a node by a vector of the world and turn it by a rotation of the world, from where it rests.</summary>
    public Trs Moved(string node, Vector3d by, Quaterniond turn)
    {
        var rotation = Rest.WorldOf(this[node]).Rotation;
        return new Trs(rotation.Inverse.Rotate(by), rotation.Inverse * turn * rotation, Vector3d.One);
    }

    public void AssertRestHolds(double tolerance = Near.Tolerance)
    {
        var pose = Evaluate();
        foreach (var joint in Joints)
        {
            Near.Equal(RestPose.ChannelsOf(joint), pose.ChannelsOf(joint), tolerance);
            Near.Equal(Rest.WorldOf(joint), pose.WorldOf(joint), tolerance);
        }
    }
}
