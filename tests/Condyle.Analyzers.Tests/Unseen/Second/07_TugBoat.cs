using System.Collections.Generic;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.Second.R07;

public sealed class TugBoat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        BoatFactory factory = new BoatFactory(rig);
        Hull hull = factory.CreateHull("hull");

        List<BoatPart> parts = new List<BoatPart>();
        parts.Add(new Rudder(hull));
        parts.Add(new Propeller(hull, Side.Left));
        parts.Add(new Propeller(hull, Side.Right));
        parts.Add(new TowHook(hull, 2));

        foreach (BoatPart part in parts)
        {
            part.Build(rig);
        }
    }
}

internal sealed class BoatFactory
{
    private readonly RigDraft rig;

    public BoatFactory(RigDraft rig)
    {
        this.rig = rig;
    }

    public Hull CreateHull(string name)
    {
        Joint joint = rig.Skeleton("tug_boat").Root(name);
        Control waterline = rig.Control("waterline");
        Control heave = rig.Control("heave").Under(waterline).PlacedAt(joint);
        heave.LimitMove(Axis.Y, -2f, 2f);
        Control roll = rig.Control("roll").Under(heave).PlacedAt(joint);
        roll.Lock(Channels.Move);
        rig.Drive(joint).ByChannels(roll);
        return new Hull(joint, roll);
    }
}

internal sealed class Hull
{
    private readonly Joint joint;
    private readonly Control control;

    public Hull(Joint joint, Control control)
    {
        this.joint = joint;
        this.control = control;
    }

    public Joint GetJoint()
    {
        return joint;
    }

    public Control GetControl()
    {
        return control;
    }
}

internal abstract class BoatPart
{
    private readonly Hull hull;

    protected BoatPart(Hull hull)
    {
        this.hull = hull;
    }

    public void Build(RigDraft rig)
    {
        Joint joint = CreateJoint(hull.GetJoint());
        Control control = rig.Control(GetControlName()).Under(hull.GetControl()).PlacedAt(joint);
        Configure(control);
        rig.Drive(joint).ByChannels(control);
        AfterBuild(rig, joint, control);
    }

    protected abstract string GetPartName();

    protected abstract Vector3 GetPosition();

    protected virtual string GetControlName()
    {
        StringBuilder builder = new StringBuilder();
        builder.Append("turn_");
        builder.Append(GetPartName());
        return builder.ToString();
    }

    protected virtual void Configure(Control control)
    {
        control.Lock(Channels.Move);
    }

    protected virtual void AfterBuild(RigDraft rig, Joint joint, Control control)
    {
        // nothing to do for most parts
    }

    private Joint CreateJoint(Joint parent)
    {
        return parent.Child(GetPartName(), at: GetPosition());
    }
}

internal sealed class Rudder : BoatPart
{
    public Rudder(Hull hull)
        : base(hull)
    {
    }

    protected override string GetPartName() => "rudder";

    protected override Vector3 GetPosition() => new Vector3(0f, -1.2f, -8f);

    protected override void Configure(Control control)
    {
        base.Configure(control);
        control.Lock(Channels.TurnX | Channels.TurnZ).LimitTurn(Axis.Y, -35f, 35f);
    }
}

internal sealed class Propeller : BoatPart
{
    private readonly Side side;

    public Propeller(Hull hull, Side side)
        : base(hull)
    {
        this.side = side;
    }

    protected override string GetPartName() => "propeller_" + side;

    protected override Vector3 GetPosition() => new Vector3(1.1f * side.Sign, -1.4f, -7.2f);

    protected override string GetControlName() => "spin_" + GetPartName();
}

internal sealed class TowHook : BoatPart
{
    private readonly int links;

    public TowHook(Hull hull, int links)
        : base(hull)
    {
        this.links = links;
    }

    protected override string GetPartName() => "tow_hook";

    protected override Vector3 GetPosition() => new Vector3(0f, 1.6f, -2.5f);

    protected override void AfterBuild(RigDraft rig, Joint joint, Control control)
    {
        Joint lastJoint = joint;
        Control lastControl = control;
        for (int i = 1; i <= links; i++)
        {
            lastJoint = lastJoint.Child(GetPartName() + "_link_" + i, at: new Vector3(0f, 0f, -0.4f));
            lastControl = rig.Control("swing_" + lastJoint.Name).Under(lastControl).PlacedAt(lastJoint).Lock(Channels.Move);
            rig.Drive(lastJoint).ByChannels(lastControl);
        }
    }
}
