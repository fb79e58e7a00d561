using System;
using System.Numerics;
using Condyle;

namespace Unseen.First.R51;

/// <summary>
/// The floating crane. The conversion of the old scene wrote a program of numbers and a pool of names; this class plays it.
/// The player was hand-written, the numbers were not: don't touch them, add a step to <see cref="Amend"/>.
/// </summary>
public sealed class FloatingCrane : IRigDefinition
{
    private const int JOINT = 1, CONTROL = 2, DRIVE = 3, CHAIN = 4, REACH = 5, GROUP = 6, LOCK = 7, LIMIT = 8, CARRY = 9, REPEAT = 10, END = 0;

    private static readonly string[] Pool =
    {
        "pontoon", "slew", "jib", "jib_knee", "jib_head", "hook", "capstan", "fender", "move_", "reach_", "holder_group", "fairlead",
    };

    // Lengths in millimetres. −1 means none.
    private static readonly int[] Program =
    {
        JOINT, 0, -1, 0, 1500, 0,
        JOINT, 1, 0, 0, 2200, -4000,
        JOINT, 2, 1, 0, 1800, 1500,
        JOINT, 3, 2, 0, 9000, 7000,
        JOINT, 4, 3, 0, -1200, 11500,
        JOINT, 5, 4, 0, -6000, 0,
        CONTROL, 0, -1,
        CONTROL, 1, 0,
        DRIVE, 0, 0,
        DRIVE, 1, 1,
        LOCK, 1, 0x2F,
        GROUP, 10, 1,
        CARRY, 0, 1,
        CHAIN, 2, 4, 0,
        REACH, 0, 1,
        REPEAT, 4,
        JOINT, 7, 0, 6000, 300, -9000,
        CONTROL, 7, 0,
        DRIVE, 7, 7,
        REPEAT, 2,
        JOINT, 6, 0, -2500, 900, 8000,
        CONTROL, 6, 0,
        DRIVE, 6, 6,
        LIMIT, 6, 1, -360, 360,
        END,
    };

    public void Define(RigDraft rig)
    {
        Joint[] joints = new Joint[64];
        Control[] controls = new Control[64];
        Group[] groups = new Group[8];
        Copy[] copies = new Copy[8];
        int[] latest = new int[Pool.Length];
        Array.Fill(latest, -1);
        int nextJoint = 0, nextControl = 0, nextGroup = 0, nextCopy = 0;
        int[] controlOf = new int[Pool.Length];
        Array.Fill(controlOf, -1);
        Skeleton skeleton = rig.Skeleton("floating_crane");
        Chain chain = default;

        int at = 0, back = -1, left = 0, step = 0;
    again:
        int op = Program[at];
        switch (op)
        {
            case JOINT:
                {
                    int name = Program[at + 1], parent = Program[at + 2];
                    Vector3 place = new Vector3(Program[at + 3], Program[at + 4], Program[at + 5] + (step * 3000)) / 1000f;
                    string text = left > 0 || step > 0 ? Pool[name] + "_" + (char)('a' + step) : Pool[name];
                    joints[nextJoint] = parent < 0 ? skeleton.Root(text, at: place) : joints[latest[parent]].Child(text, at: place);
                    latest[name] = nextJoint++;
                    at += 6;
                    break;
                }

            case CONTROL:
                {
                    Joint joint = joints[latest[Program[at + 1]]];
                    Control control = rig.Control(Pool[8] + joint.Name).PlacedAt(joint);
                    if (Program[at + 2] >= 0)
                        control = control.Under(controls[controlOf[Program[at + 2]]]);
                    controls[nextControl] = control;
                    controlOf[Program[at + 1]] = nextControl++;
                    at += 3;
                    if (left > 0 && Program[at] != DRIVE)
                        goto default;
                    break;
                }

            case DRIVE:
                rig.Drive(joints[latest[Program[at + 1]]]).ByChannels(controls[controlOf[Program[at + 2]]]);
                at += 3;
                if (back >= 0 && (Program[at] == REPEAT || Program[at] == END || Program[at] == LIMIT))
                {
                    step++;
                    if (step < left)
                        at = back;
                    else
                    {
                        back = -1;
                        left = step = 0;
                    }
                }

                break;

            case CHAIN:
                chain = rig.Chain(joints[latest[Program[at + 1]]], joints[latest[Program[at + 2]]]);
                copies[nextCopy++] = chain.Copy("ik").Under(groups[Program[at + 3]]);
                at += 4;
                break;

            case REACH:
                {
                    Copy copy = copies[Program[at + 1]];
                    Control goal = rig.Control(Pool[9] + chain.Tip.Name).Under(controls[controlOf[Program[at + 2]]]).PlacedAt(chain.Tip);
                    rig.TwoBone(copy).Reach(goal);
                    for (int i = 0; i < chain.Count; i++)
                        rig.Drive(chain[i]).ByChannels(copy.Of(chain[i]));
                    at += 3;
                    break;
                }

            case GROUP:
                groups[nextGroup++] = rig.Group(Pool[Program[at + 1]]).PlacedAt(controls[controlOf[Program[at + 2]]]);
                at += 3;
                break;

            case LOCK:
                controls[controlOf[Program[at + 1]]].Lock((Channels)Program[at + 2]);
                at += 3;
                break;

            case LIMIT:
                controls[controlOf[Program[at + 1]]].LimitTurn((Axis)Program[at + 2], Program[at + 3], Program[at + 4]);
                at += 5;
                break;

            case CARRY:
                rig.Drive(groups[Program[at + 1]]).ByMatrix(controls[controlOf[Program[at + 2]]]);
                at += 3;
                break;

            case REPEAT:
                left = Program[at + 1];
                back = at + 2;
                at = back;
                break;

            case END:
                goto done;

            default:
                throw new InvalidOperationException("Unknown number " + op + " at " + at + ".");
        }

        goto again;
    done:
        Amend(rig, joints[latest[5]], joints[latest[4]], controls[controlOf[0]], latest);
    }

    // 2023: the hook was never rigged. It hangs below the jib's head, or swings by hand.
    private static void Amend(RigDraft rig, Joint hook, Joint head, Control pontoon, int[] latest)
    {
        if (latest[Array.IndexOf(Pool, "fairlead")] >= 0)
            return;
        Group hang = rig.Group("hook_hang").PlacedAt(hook);
        rig.Drive(hang).ByMatrix(head).KeepingOffset();
        Control swing = rig.Control("swing_hook").Under(pontoon).PlacedAt(hook);
        Switch free = swing.Switch("free");
        rig.Blend(hook).From(hang, free).From(swing, free);
    }
}
