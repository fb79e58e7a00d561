using System.Numerics;
using Condyle;

namespace Unseen.Third.R27;

/// <summary>The generic dock worker. Shared by the crane crew, the lashers and the night shift; only the meshes differ.</summary>
public sealed class DockWorker : IRigDefinition
{
    private const float PoleDistance = 0.45f;

    public void Define(RigDraft rig)
    {
        var body = Body.Declare(rig);

        var systems = rig.Group("systems_group");
        var world = rig.Control("world").Unlock(Channels.Scale);
        var cog = rig.Control("cog").Under(world).PlacedAt(body.Pelvis);

        rig.Drive(body.Root).ByChannels(world);
        rig.Drive(body.Pelvis).ByChannels(cog);

        var chest = Torso(rig, body, cog);
        Head(rig, body, chest);

        foreach (var side in Side.Both)
        {
            Limb(rig, "arm", "hand", "elbow", body.Arm(side), side, systems, world, chest, kneeling: false);
            Limb(rig, "leg", "foot", "knee", body.Leg(side), side, systems, world, cog, kneeling: true);
            Fingers(rig, body, side);
        }

        // The hook hangs from the belt. Designers toggle its visibility, we only have to carry it.
        var hook = rig.Control("cargo_hook").Under(cog).PlacedAt(body.Hook).Lock(Channels.Move);
        rig.Drive(body.Hook).ByChannels(hook);
    }

    private static Control Torso(RigDraft rig, in Body body, Control cog)
    {
        var above = cog;
        var spine = rig.Chain(body.Waist, body.Chest);
        for (var i = 0; i < spine.Count; i++)
        {
            var control = rig.Control($"turn_{spine[i].Name}").Under(above).PlacedAt(spine[i]);
            if (i < spine.Count - 1)
                control.Lock(Channels.Move);
            rig.Drive(spine[i]).ByChannels(control);
            above = control;
        }

        return above;
    }

    private static void Head(RigDraft rig, in Body body, Control chest)
    {
        var neck = rig.Control("turn_neck").Under(chest).PlacedAt(body.Neck).Lock(Channels.Move);
        var head = rig.Control("turn_head").Under(neck).PlacedAt(body.Head).LimitTurn(Axis.Y, -80f, 80f);
        rig.Drive(body.Neck).ByChannels(neck);
        rig.Drive(body.Head).ByChannels(head);
    }

    private static void Limb(
        RigDraft rig, string limb, string end, string middle, Chain chain, Side side, Group systems, Control world, Control parent, bool kneeling)
    {
        var root = rig.Control($"{limb}_root_{side}").Under(parent).PlacedAt(chain.Root);
        var parts = rig.Group($"{limb}_{side}_group").Under(systems).PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);

        var ik = chain.Copy("ik").Under(parts);
        var goal = rig.Control($"{end}_{side}").Under(world).PlacedAt(chain.Tip);
        var pole = rig.Control($"{middle}_pole_{side}").Under(world).PlacedAt(ik.PolePoint(PoleDistance)).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(goal).Face(pole);

        var fk = chain.Copy("fk").Under(parts);
        Node above = root;
        foreach (var joint in chain)
        {
            var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            above = control;
        }

        // Legs start planted, arms start free.
        var useFk = goal.Switch("fk", kneeling ? 0f : 1f).AlsoOn(root);
        rig.Blend(chain).From(ik, useFk.Inverse).From(fk, useFk);

        rig.Label($"ik_{limb}_label_{side}", "IK").Under(goal).ShownBy(useFk.Inverse);
        rig.Label($"fk_{limb}_label_{side}", "FK").Under(goal).ShownBy(useFk);
    }

    private static void Fingers(RigDraft rig, in Body body, Side side)
    {
        foreach (var (root, tip) in body.Fingers(side))
        {
            Node above = body.Arm(side).Tip;
            foreach (var joint in rig.Chain(root, tip))
            {
                var control = rig.Control($"curl_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move | Channels.TurnY);
                rig.Drive(joint).ByChannels(control);
                above = control;
            }
        }
    }

    private readonly struct Body
    {
        private readonly RigDraft _rig;
        private readonly JointPair _shoulder, _wrist, _hip, _ankle;
        private readonly JointSetPair _fingerRoots, _fingerTips;

        private Body(RigDraft rig, Skeleton skeleton)
        {
            _rig = rig;
            Root = skeleton.Root("root", JointRole.Helper);
            Pelvis = Root.Child("pelvis", at: new Vector3(0f, 0.98f, 0f));
            Waist = Pelvis.Child("waist", at: new Vector3(0f, 0.12f, 0.01f));
            Chest = Waist.Child("ribs", at: new Vector3(0f, 0.14f, 0f)).Child("chest", at: new Vector3(0f, 0.16f, -0.02f));
            Neck = Chest.Child("neck", at: new Vector3(0f, 0.2f, 0f));
            Head = Neck.Child("head", at: new Vector3(0f, 0.1f, 0.02f));
            Hook = Pelvis.Child("cargo_hook_socket", JointRole.Helper, new Vector3(0.18f, -0.05f, 0.06f));

            var left = Half.Declare(Chest, Pelvis, Side.Left);
            var right = Half.Declare(Chest, Pelvis, Side.Right);
            _shoulder = new(left.Shoulder, right.Shoulder);
            _wrist = new(left.Wrist, right.Wrist);
            _hip = new(left.Hip, right.Hip);
            _ankle = new(left.Ankle, right.Ankle);
            _fingerRoots = new(new JointSet(left.FingerRoots), new JointSet(right.FingerRoots));
            _fingerTips = new(new JointSet(left.FingerTips), new JointSet(right.FingerTips));
        }

        public Joint Root { get; }

        public Joint Pelvis { get; }

        public Joint Waist { get; }

        public Joint Chest { get; }

        public Joint Neck { get; }

        public Joint Head { get; }

        public Joint Hook { get; }

        public static Body Declare(RigDraft rig) => new(rig, rig.Skeleton("dock_worker"));

        public Chain Arm(Side side) => _rig.Chain(_shoulder[side], _wrist[side]);

        public Chain Leg(Side side) => _rig.Chain(_hip[side], _ankle[side]);

        public (Joint Root, Joint Tip)[] Fingers(Side side)
        {
            var fingers = new (Joint, Joint)[_fingerRoots[side].Count];
            for (var i = 0; i < fingers.Length; i++)
                fingers[i] = (_fingerRoots[side][i], _fingerTips[side][i]);
            return fingers;
        }
    }

    private sealed record Half(Joint Shoulder, Joint Wrist, Joint Hip, Joint Ankle, Joint[] FingerRoots, Joint[] FingerTips)
    {
        private static readonly string[] Names = ["thumb", "pointer", "mitten"];

        public static Half Declare(Joint chest, Joint pelvis, Side side)
        {
            var x = side.Sign;
            var shoulder = chest.Child($"shoulder_{side}", at: new Vector3(0.19f * x, 0.14f, 0f));
            var wrist = shoulder.Child($"elbow_{side}", at: new Vector3(0.27f * x, -0.02f, -0.02f)).Child($"wrist_{side}", at: new Vector3(0.25f * x, 0f, 0.03f));
            var hip = pelvis.Child($"hip_{side}", at: new Vector3(0.1f * x, -0.06f, 0f));
            var ankle = hip.Child($"knee_{side}", at: new Vector3(0f, -0.44f, 0.03f)).Child($"ankle_{side}", at: new Vector3(0f, -0.42f, -0.04f));
            ankle.Child($"toes_{side}", at: new Vector3(0f, -0.06f, 0.14f));

            var roots = new Joint[Names.Length];
            var tips = new Joint[Names.Length];
            for (var i = 0; i < Names.Length; i++)
            {
                roots[i] = wrist.Child($"{Names[i]}_base_{side}", at: new Vector3(0.07f * x, 0f, 0.03f - (0.03f * i)));
                tips[i] = roots[i].Child($"{Names[i]}_end_{side}", at: new Vector3(0.04f * x, 0f, 0f));
            }

            return new Half(shoulder, wrist, hip, ankle, roots, tips);
        }
    }
}
