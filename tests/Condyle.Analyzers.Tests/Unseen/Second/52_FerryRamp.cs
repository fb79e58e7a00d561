using System;
using System.Collections;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R52;

/// <summary>
/// Linkspan for the car ferry.
/// History:
///   first version with one ramp
///   second ramp, flaps, rams
///   warning lights
/// </summary>
public sealed class FerryRamp : IRigDefinition
{
    #region Constants

    private const int RAMP_COUNT = 2;
    private const int FLAP_COUNT = 3;
    private const float RAMP_LENGTH = 14.0f;
    private const float DEG_UP = 12.0f;
    private const float DEG_DOWN = -8.0f;

    #endregion

    #region Fields

    private RigDraft m_rig = null!;
    private Hashtable m_joints = new Hashtable();
    private ArrayList m_lights = new ArrayList();

    #endregion

    public void Define(RigDraft rig)
    {
        m_rig = rig;
        m_joints = new Hashtable();
        m_lights = new ArrayList();

        Joint jntAbutment = rig.Skeleton("ferry_ramp").Root("abutment");
        m_joints["abutment"] = jntAbutment;

        Control ctlMain = rig.Control("linkspan");
        ctlMain.PlacedAt(jntAbutment);
        rig.Drive(jntAbutment).ByChannels(ctlMain);

        int iRamp = 0;
        do
        {
            BuildRamp(iRamp, ctlMain);
        }
        while (++iRamp < RAMP_COUNT);

        BuildLights(ctlMain);
    }

    private void BuildRamp(int iRamp, Control ctlParent)
    {
        string strRamp = "ramp" + (iRamp + 1).ToString();
        float fX = (iRamp == 0) ? 2.5f : -2.5f;

        Joint jntRamp = GetJoint("abutment").Child(strRamp, JointRole.Deform, new Vector3(fX, 0.0f, 0.5f));
        m_joints.Add(strRamp, jntRamp);

        Control ctlRamp = m_rig.Control(strRamp + "_lift").Under(ctlParent).PlacedAt(jntRamp);
        ctlRamp.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        ctlRamp.LimitTurn(Axis.X, DEG_DOWN, DEG_UP);
        m_rig.Drive(jntRamp).ByChannels(ctlRamp);

        // flaps at the outer end
        Joint jntPrev = jntRamp;
        Control ctlPrev = ctlRamp;
        for (int iFlap = 0; ; iFlap++)
        {
            if (iFlap >= FLAP_COUNT)
                break;

            float fZ;
            switch (iFlap)
            {
                case 0:
                    fZ = RAMP_LENGTH;
                    break;
                case 1:
                case 2:
                    fZ = 0.9f;
                    if (iFlap == 2)
                        goto default;
                    break;
                default:
                    fZ = 0.6f;
                    break;
            }

            string strFlap = String.Format("{0}_flap{1}", strRamp, iFlap + 1);
            Joint jntFlap = jntPrev.Child(strFlap, JointRole.Deform, new Vector3(0.0f, 0.0f, fZ));
            Control ctlFlap = m_rig.Control(strFlap + "_turn");
            ctlFlap.Under(ctlPrev);
            ctlFlap.PlacedAt(jntFlap);
            ctlFlap.Lock(Channels.Move);
            m_rig.Drive(jntFlap).ByChannels(ctlFlap);
            m_joints.Add(strFlap, jntFlap);
            jntPrev = jntFlap;
            ctlPrev = ctlFlap;

            if (iFlap == FLAP_COUNT - 1)
                m_lights.Add(new object[] { strRamp, jntFlap, ctlFlap });
        }

        BuildRam(strRamp, ctlParent, ctlRamp);
    }

    private void BuildRam(string strRamp, Control ctlBase, Control ctlRamp)
    {
        Joint jntCylinder = GetJoint("abutment").Child(strRamp + "_cylinder", JointRole.Deform, new Vector3(strRamp == "ramp1" ? 2.5f : -2.5f, -2.0f, 1.0f));
        Joint jntRod = jntCylinder.Child(strRamp + "_rod", JointRole.Deform, new Vector3(0.0f, 0.8f, 1.0f));
        Joint jntPin = jntRod.Child(strRamp + "_pin", JointRole.Helper, new Vector3(0.0f, 0.8f, 0.6f));

        Chain chnRam = m_rig.Chain(jntCylinder, jntPin);
        Group grpRam = m_rig.Group(strRamp + "_ram");
        grpRam.Under(ctlBase);
        grpRam.PlacedAt(jntCylinder);

        Copy cpyIk = chnRam.Copy("ik").Under(grpRam);
        Group grpPin = m_rig.Group(strRamp + "_pin_group").Under(ctlRamp).PlacedAt(jntPin);
        m_rig.TwoBone(cpyIk).Reach(grpPin);
        foreach (Joint jnt in chnRam)
        {
            Drive drv = m_rig.Drive(jnt);
            drv.ByChannels(cpyIk.Of(jnt));
        }
    }

    private void BuildLights(Control ctlMain)
    {
        Switch swWarn = ctlMain.Switch("warning");
        IEnumerator en = m_lights.GetEnumerator();
        int n = 0;
        while (en.MoveNext())
        {
            object[]? arr = en.Current as object[];
            if (arr == null || arr.Length != 3)
                continue;
            string strRamp = (string)arr[0];
            Joint jnt = ((Joint)arr[1]).Child(strRamp + "_light", at: new Vector3(0.0f, 1.1f, 0.0f));
            Control ctl = (Control)arr[2];
            Group grp = m_rig.Group(strRamp + "_light_group").Under(ctl).PlacedAt(jnt);
            m_rig.Drive(jnt).ByChannels(grp);
            m_rig.Label("light" + n++, strRamp.ToUpper() + " MOVES").Under(jnt).ShownBy(swWarn);
            if (m_joints.ContainsKey(strRamp + "_flap" + FLAP_COUNT) && !m_joints.Contains("buzzer"))
            {
                m_joints["buzzer"] = GetJoint("abutment").Child("buzzer", at: new Vector3(0.0f, 2.0f, 0.0f));
                m_rig.Drive(GetJoint("buzzer")).ByChannels(ctlMain).KeepingOffset();
            }
        }
    }

    private Joint GetJoint(string strName)
    {
        object? o = m_joints[strName];
        if (o is Joint)
            return (Joint)o;
        throw new ApplicationException("No joint " + strName);
    }
}
