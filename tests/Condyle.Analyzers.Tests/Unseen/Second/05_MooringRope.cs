using System.Numerics;
using Condyle;

namespace Unseen.Second.R05;

// A rope from the ship to the bollard. First rig of mine!
public sealed class MooringRope : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        int amount = 9;

        // make all the joints
        Joint[] ropeJoints = new Joint[amount];
        Skeleton skeleton = rig.Skeleton("mooring_rope");
        for (int i = 0; i < amount; i++)
        {
            if (i == 0)
            {
                ropeJoints[i] = skeleton.Root("rope_" + i, JointRole.Deform, new Vector3(0, 3, 0));
            }
            else
            {
                // the rope sags in the middle
                float down = 0;
                if (i <= amount / 2)
                {
                    down = -0.2f;
                }
                else
                {
                    down = 0.1f;
                }
                ropeJoints[i] = ropeJoints[i - 1].Child("rope_" + i, JointRole.Deform, new Vector3(0, down, 0.5f));
            }
        }

        // big controls at the ends and in the middle
        Control shipEnd = rig.Control("ship_end").PlacedAt(ropeJoints[0]);
        Control middle = rig.Control("rope_middle").PlacedAt(ropeJoints[amount / 2]);
        Control quayEnd = rig.Control("quay_end").PlacedAt(ropeJoints[amount - 1]);

        Group followGroup = rig.Group("rope_follow");

        // every joint gets a small control too, in a group that is between the big ones
        int counter = 0;
        while (counter < amount)
        {
            Joint joint = ropeJoints[counter];
            string name = MakeName(counter, amount);

            Group between = rig.Group("between_" + name + "_group").Under(followGroup).PlacedAt(joint);

            float half = amount / 2;
            if (counter < half)
            {
                float t = counter / half;
                BetweenTwo(rig, between, shipEnd, middle, t);
            }
            else
            {
                float t = (counter - half) / half;
                BetweenTwo(rig, between, middle, quayEnd, t);
            }

            Control small = rig.Control("small_" + name);
            small = small.Under(between);
            small = small.PlacedAt(joint);
            if (counter == 0 || counter == amount - 1)
            {
                small = small.Lock(Channels.Move);
            }
            rig.Drive(joint).ByChannels(small);

            counter++;
        }
    }

    // t = 0 is first, t = 1 is second
    private void BetweenTwo(RigDraft rig, Group between, Control first, Control second, float t)
    {
        if (t <= 0)
        {
            rig.Drive(between).ByMatrix(first);
        }
        else if (t >= 1)
        {
            rig.Drive(between).ByMatrix(second);
        }
        else
        {
            rig.Blend(between).From(first, 1 - t).From(second, t);
        }
    }

    private string MakeName(int number, int amount)
    {
        if (number == 0)
        {
            return "first";
        }
        if (number == amount - 1)
        {
            return "last";
        }
        return "nr" + number;
    }
}
