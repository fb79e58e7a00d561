using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R30;

// My first rig! A rowing boat with three pairs of oars and a rudder.
public sealed class RowingBoat : IRigDefinition
{
    private int numberOfOars = 0;
    private bool rudderDone = false;
    private readonly List<Control> allControls = new List<Control>();

    public void Define(RigDraft rig)
    {
        // start fresh, in case the rig is built a second time
        numberOfOars = 0;
        rudderDone = false;
        allControls.Clear();

        Skeleton skeleton = rig.Skeleton("rowing_boat");
        Joint hull = skeleton.Root("hull", JointRole.Deform, new Vector3(0, 0.15f, 0));

        Control boat = rig.Control("boat");
        boat.PlacedAt(hull);
        rig.Drive(hull).ByChannels(boat);
        allControls.Add(boat);

        Group oars = rig.Group("oars_group");
        oars.Under(boat);

        // the oars
        float z = 1.2f;
        int i = 1;
        while (i <= 3)
        {
            for (int s = 0; s < 2; s++)
            {
                string sideName;
                float x;
                if (s == 0)
                {
                    sideName = "left";
                    x = 0.7f;
                }
                else
                {
                    sideName = "right";
                    x = -0.7f;
                }

                string name = "oar_" + i + "_" + sideName;
                Joint lock1 = hull.Child("oarlock_" + i + "_" + sideName, JointRole.Helper, new Vector3(x, 0.35f, z));
                Joint oar = lock1.Child(name, JointRole.Deform, new Vector3(0, 0.02f, 0));
                Joint blade = oar.Child("blade_" + i + "_" + sideName, at: new Vector3(x * 2.5f, -0.4f, 0));

                Control c = rig.Control("turn_" + name);
                c.Under(oars);
                c.PlacedAt(oar);
                c.Lock(Channels.Move);
                if (sideName == "left")
                    c.LimitTurn(Axis.Y, -50, 60);
                else
                    c.LimitTurn(Axis.Y, -60, 50);
                rig.Drive(oar).ByChannels(c);
                allControls.Add(c);

                Control feather = rig.Control("feather_" + i + "_" + sideName).Under(c).PlacedAt(blade);
                feather.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
                feather.LimitTurn(Axis.X, 0, 90);
                rig.Drive(blade).ByChannels(feather);

                numberOfOars++;
            }

            z -= 0.8f;
            i++;
        }

        // the rudder, only once
        for (int n = 0; n < allControls.Count; n++)
        {
            if (!rudderDone && numberOfOars == 6)
            {
                Joint rudder = hull.Child("rudder", at: new Vector3(0, 0.2f, -2.1f));
                Control tiller = rig.Control("tiller").Under(allControls[n]).PlacedAt(rudder);
                tiller.Lock(Channels.Move);
                tiller.Lock(Channels.TurnX);
                tiller.Lock(Channels.TurnZ);
                tiller.LimitTurn(Axis.Y, -35, 35);
                rudderDone = true;

                // the rudder can also hold against the quay while the boat turns
                Control quay = rig.Control("quay_hold").PlacedAt(rudder);
                Switch hold = tiller.Switch("hold");
                rig.Blend(rudder).From(tiller, 1f).From(quay, hold);
                Label label = rig.Label("hold_label", "HOLDS");
                label.Under(tiller);
                label.ShownBy(hold);
            }
        }

        // a lantern at the bow
        bool found = false;
        foreach (Control c in allControls)
        {
            if (c.Name.Contains("_1_") && c.Name.EndsWith("left", StringComparison.Ordinal) && found == false)
            {
                found = true;
                continue;
            }

            if (c.Name == "boat")
            {
                Joint lantern = hull.Child("lantern", at: new Vector3(0, 0.8f, 2.3f));
                Control swing = rig.Control("lantern_swing").Under(c).PlacedAt(lantern).Lock(Channels.Move);
                rig.Drive(lantern).ByChannels(swing);
            }
        }

        if (found)
        {
            rig.Group("bow_" + "left" + "_parts").Under(boat);
        }
    }
}
