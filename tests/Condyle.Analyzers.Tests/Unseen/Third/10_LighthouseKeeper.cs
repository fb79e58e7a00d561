using System;
using System.Collections.Generic;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.Third.R10;

/**
 * The lighthouse keeper.
 *
 * @author m.brandt
 */
public sealed class LighthouseKeeper : IRigDefinition
{

    private static readonly float POLE_DISTANCE = 0.4f;

    private readonly NamingService namingService = NamingServiceImpl.getInstance();
    private readonly Dictionary<String, Joint> joints = new Dictionary<String, Joint>();

    public void Define(RigDraft rig)
    {
        joints.Clear();
        createSkeleton(rig);

        Control world = rig.Control(namingService.getName("world", null, null));
        Control body = createFollower(rig, "body", world, getJoint("pelvis"));
        Control chest = createFollower(rig, "chest", body, getJoint("chest"));
        Control head = createFollower(rig, "head", chest, getJoint("head"));
        createFollower(rig, "jaw", head, getJoint("jaw"));

        foreach (Side side in Side.Both)
        {
            LimbBuilder arm = LimbBuilder.newBuilder(rig, namingService)
                .setPart("arm")
                .setSide(side)
                .setChain(rig.Chain(getJoint(namingService.getName("shoulder", side)), getJoint(namingService.getName("wrist", side))))
                .setWorld(world)
                .setAnchor(chest)
                .setPoleDistance(POLE_DISTANCE);
            arm.build();

            LimbBuilder leg = LimbBuilder.newBuilder(rig, namingService)
                .setPart("leg")
                .setSide(side)
                .setChain(rig.Chain(getJoint(namingService.getName("hip", side)), getJoint(namingService.getName("ankle", side))))
                .setWorld(world)
                .setAnchor(body)
                .setPoleDistance(POLE_DISTANCE * 1.5f);
            leg.build();
        }

        Control lantern = createFollower(rig, "lantern", world, getJoint("lantern"));
        lantern.AsProp(rig, getJoint("flame"));
    }

    private void createSkeleton(RigDraft rig)
    {
        Skeleton skeleton = rig.Skeleton("lighthouse_keeper");
        Joint pelvis = register(skeleton.Root("pelvis", JointRole.Deform, new Vector3(0f, 0.95f, 0f)));
        Joint chest = register(pelvis.Child("chest", JointRole.Deform, new Vector3(0f, 0.3f, 0f)));
        Joint head = register(chest.Child("head", JointRole.Deform, new Vector3(0f, 0.35f, 0f)));
        register(head.Child("jaw", JointRole.Deform, new Vector3(0f, -0.02f, 0.05f)));
        Joint lantern = register(pelvis.Child("lantern", JointRole.Helper, new Vector3(0.5f, 0.1f, 0.2f)));
        register(lantern.Child("flame", JointRole.Helper, new Vector3(0f, -0.15f, 0f)));
        for (int i = 0; i < Side.Both.Count; i++)
        {
            Side side = Side.Both[i];
            Joint shoulder = register(chest.Child(namingService.getName("shoulder", side), JointRole.Deform, new Vector3(0.18f * side.Sign, 0.2f, 0f)));
            Joint elbow = register(shoulder.Child(namingService.getName("elbow", side), JointRole.Deform, new Vector3(0.28f * side.Sign, 0f, -0.02f)));
            register(elbow.Child(namingService.getName("wrist", side), JointRole.Deform, new Vector3(0.26f * side.Sign, 0f, 0.02f)));
            Joint hip = register(pelvis.Child(namingService.getName("hip", side), JointRole.Deform, new Vector3(0.1f * side.Sign, -0.05f, 0f)));
            Joint knee = register(hip.Child(namingService.getName("knee", side), JointRole.Deform, new Vector3(0f, -0.42f, 0.02f)));
            Joint ankle = register(knee.Child(namingService.getName("ankle", side), JointRole.Deform, new Vector3(0f, -0.41f, -0.02f)));
            register(ankle.Child(namingService.getName("toes", side), JointRole.Deform, new Vector3(0f, -0.06f, 0.12f)));
        }
    }

    private Joint register(Joint joint)
    {
        joints.Add(joint.Name, joint);
        return joint;
    }

    private Joint getJoint(String name)
    {
        if (!joints.ContainsKey(name))
        {
            throw new ArgumentException("no joint: " + name);
        }
        return joints[name];
    }

    private Control createFollower(RigDraft rig, String part, Control parent, Joint joint)
    {
        Control control = rig.Control(namingService.getName("ctl", part, null)).Under(parent).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    public interface NamingService
    {
        String getName(String part, Side side);
        String getName(String? tag, String? part, Side? side);
        String getGroupName(String part, Side side);
    }

    private sealed class NamingServiceImpl : NamingService
    {
        private static NamingServiceImpl? instance;

        private NamingServiceImpl()
        {
        }

        public static NamingServiceImpl getInstance()
        {
            if (instance == null)
            {
                instance = new NamingServiceImpl();
            }
            return instance;
        }

        public String getName(String part, Side side)
        {
            return getName(null, part, side);
        }

        public String getName(String? tag, String? part, Side? side)
        {
            StringBuilder sb = new StringBuilder();
            if (tag != null)
            {
                sb.Append(tag);
            }
            if (part != null)
            {
                if (sb.Length > 0)
                {
                    sb.Append('_');
                }
                sb.Append(part);
            }
            if (side != null)
            {
                sb.Append('_').Append(side.ToString());
            }
            return sb.ToString();
        }

        public String getGroupName(String part, Side side)
        {
            return new StringBuilder(getName(part, side)).Append("_group").ToString();
        }
    }

    private sealed class LimbBuilder
    {
        private readonly RigDraft rig;
        private readonly NamingService names;
        private String part = "";
        private Side side = Side.Left;
        private Chain chain;
        private Control world;
        private Control anchor;
        private float poleDistance;

        private LimbBuilder(RigDraft rig, NamingService names)
        {
            this.rig = rig;
            this.names = names;
        }

        public static LimbBuilder newBuilder(RigDraft rig, NamingService names) { return new LimbBuilder(rig, names); }
        public LimbBuilder setPart(String part) { this.part = part; return this; }
        public LimbBuilder setSide(Side side) { this.side = side; return this; }
        public LimbBuilder setChain(Chain chain) { this.chain = chain; return this; }
        public LimbBuilder setWorld(Control world) { this.world = world; return this; }
        public LimbBuilder setAnchor(Control anchor) { this.anchor = anchor; return this; }
        public LimbBuilder setPoleDistance(float poleDistance) { this.poleDistance = poleDistance; return this; }

        public void build()
        {
            Group group = rig.Group(names.getGroupName(part, side)).Under(anchor).PlacedAt(chain.Root);
            Copy ik = chain.Copy("ik").Under(group);
            Copy fk = chain.Copy("fk").Under(group);
            Control goal = rig.Control(names.getName("goal", part, side)).Under(world).PlacedAt(chain.Tip);
            Control pole = rig.Control(names.getName("pole", part, side)).Under(world).PlacedAt(ik.PolePoint(poleDistance));
            rig.TwoBone(ik).Reach(goal).Face(pole);

            Node parent = anchor;
            IEnumerator<Joint> it = chain.GetEnumerator();
            while (it.MoveNext())
            {
                Control control = rig.Control(names.getName("fk", it.Current.Name, null)).Under(parent).PlacedAt(it.Current);
                rig.Drive(fk.Of(it.Current)).ByChannels(control);
                parent = control;
            }

            Switch fkSwitch = goal.Switch("fk", part.Equals("arm") ? 1.0f : 0.0f);
            rig.Blend(chain).From(ik, fkSwitch.Inverse).From(fk, fkSwitch);
            rig.Label(names.getName("ik_label", part, side), "IK").Under(goal).ShownBy(fkSwitch.Inverse);
            rig.Label(names.getName("fk_label", part, side), "FK").Under(goal).ShownBy(fkSwitch);
        }
    }
}

static class ControlUtils
{
    public static void AsProp(this Control control, RigDraft rig, Joint child)
    {
        Control ctl = rig.Control(control.Name + "_" + child.Name).Under(control).PlacedAt(child).Unlock(Channels.Scale);
        rig.Drive(child).ByChannels(ctl).WithScale();
    }
}
