using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R29;

/// <summary>Composes the docker's rig from its modules.</summary>
public sealed class DockerRigDefinition : IRigDefinition
{
    private readonly IReadOnlyList<IRigModule> _modules = new IRigModule[] { new TorsoModule(), new LimbModule(new ArmDescription()), new LimbModule(new LegDescription()) };

    /// <inheritdoc />
    public void Define(RigDraft rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var context = new RigContext(rig);
        foreach (IRigModule module in _modules)
            module.Declare(context);
        foreach (IRigModule module in _modules)
            module.Assemble(context);
    }
}

internal interface IRigModule
{
    void Declare(RigContext context);
    void Assemble(RigContext context);
}

internal interface ILimbDescription
{
    string LimbName { get; }
    string AnchorName { get; }
    string GoalName { get; }
    float PoleDistance { get; }
    IEnumerable<(string Name, Vector3 Offset)> Joints { get; }
}

internal sealed class RigContext(RigDraft draft)
{
    private readonly Dictionary<string, Joint> _joints = new Dictionary<string, Joint>();
    private readonly Dictionary<string, Control> _controls = new Dictionary<string, Control>();
    public RigDraft Draft { get; } = draft;
    public Skeleton Skeleton { get; } = draft.Skeleton("docker");
    public Control World { get; } = draft.Control("world");
    public Group Systems { get; } = draft.Group("systems_group");
    public Joint GetJoint(string name) => _joints.TryGetValue(name, out Joint joint) ? joint : throw new KeyNotFoundException(name);
    public Control GetControl(string name) => _controls[name];
    public void Register(Joint joint) => _joints.Add(joint.Name, joint);
    public void Register(string name, Control control) => _controls.Add(name, control);
}

internal sealed class TorsoModule : IRigModule
{
    public void Declare(RigContext context)
    {
        Joint pelvis = context.Skeleton.Root("pelvis", at: new Vector3(0f, 0.98f, 0f));
        Joint waist = pelvis.Child("waist", at: new Vector3(0f, 0.12f, 0f));
        Joint chest = waist.Child("chest", at: new Vector3(0f, 0.25f, 0.01f));
        Joint head = chest.Child("head", at: new Vector3(0f, 0.3f, 0.02f));
        Array.ForEach(new[] { pelvis, waist, chest, head }, context.Register);
    }
    public void Assemble(RigContext context)
    {
        Control parent = context.World;
        foreach (string name in new[] { "pelvis", "waist", "chest", "head" })
        {
            Joint joint = context.GetJoint(name);
            Control control = context.Draft.Control(name + "_handle").Under(parent).PlacedAt(joint);
            context.Draft.Drive(joint).ByChannels(control);
            context.Register(name, control);
            parent = control;
        }
    }
}

internal sealed class ArmDescription : ILimbDescription
{
    public string LimbName => "arm";
    public string AnchorName => "chest";
    public string GoalName => "hand";
    public float PoleDistance => 0.4f;
    public IEnumerable<(string Name, Vector3 Offset)> Joints => new[] {
        ("shoulder", new Vector3(0.19f, 0.2f, 0f)),
        ("elbow", new Vector3(0.28f, 0f, -0.03f)),
        ("wrist", new Vector3(0.26f, 0f, 0.03f)),
    };
}

internal sealed class LegDescription : ILimbDescription
{
    public string LimbName => "leg";
    public string AnchorName => "pelvis";
    public string GoalName => "foot";
    public float PoleDistance => 0.5f;
    public IEnumerable<(string Name, Vector3 Offset)> Joints => new[] {
        ("hip", new Vector3(0.1f, -0.05f, 0f)),
        ("knee", new Vector3(0f, -0.43f, 0.02f)),
        ("ankle", new Vector3(0f, -0.42f, -0.03f)),
    };
}

internal sealed class LimbModule : IRigModule
{
    private readonly ILimbDescription _description;
    private readonly Dictionary<Side, Joint[]> _limbs = new Dictionary<Side, Joint[]>();
    public LimbModule(ILimbDescription description) => _description = description;
    public void Declare(RigContext context)
    {
        foreach (Side side in Side.Both)
        {
            var limb = new List<Joint>();
            Joint above = context.GetJoint(_description.AnchorName);
            foreach ((string name, Vector3 offset) in _description.Joints)
            {
                above = above.Child($"{name}_{side}", at: offset * new Vector3(side.Sign, 1f, 1f));
                context.Register(above);
                limb.Add(above);
            }
            _limbs[side] = limb.ToArray();
        }
    }
    public void Assemble(RigContext context)
    {
        foreach (Side side in Side.Both)
        {
            RigDraft rig = context.Draft;
            Chain chain = rig.Chain(_limbs[side][0], _limbs[side][^1]);
            Control anchor = context.GetControl(_description.AnchorName);
            Group group = rig.Group($"{_description.LimbName}_{side}_group").Under(context.Systems).PlacedAt(anchor);
            rig.Drive(group).ByMatrix(anchor);
            Copy ik = chain.Copy("ik").Under(group);
            Copy fk = chain.Copy("fk").Under(group);
            Control goal = rig.Control($"{_description.GoalName}_{side}").Under(context.World).PlacedAt(chain.Tip);
            Control pole = rig.Control($"{_description.LimbName}_pole_{side}").Under(context.World).PlacedAt(ik.PolePoint(_description.PoleDistance)).Lock(Channels.Turn);
            rig.TwoBone(ik).Reach(goal).Face(pole);
            Control above = anchor;
            foreach (Joint joint in chain)
            {
                Control turn = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }
            Switch fkAmount = goal.Switch("fk").AlsoOn(above);
            rig.Blend(chain).From(ik, fkAmount.Inverse).From(fk, fkAmount);
            rig.Label($"{_description.LimbName}_ik_label_{side}", "IK").ShownBy(fkAmount.Inverse);
            rig.Label($"{_description.LimbName}_fk_label_{side}", "FK").ShownBy(fkAmount);
        }
    }
}
