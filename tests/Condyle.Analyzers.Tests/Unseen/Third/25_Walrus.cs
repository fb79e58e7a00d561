using System;
using System.Collections;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R25;

#region CLimbInfo

/// <summary>
/// Holds the data of one limb.
/// </summary>
public class CLimbInfo
{
    private string m_strName;
    private string m_strFrom;
    private string m_strTo;
    private string m_strAbove;
    private float m_fPole;

    public CLimbInfo(string strName, string strFrom, string strTo, string strAbove, float fPole)
    {
        m_strName = strName;
        m_strFrom = strFrom;
        m_strTo = strTo;
        m_strAbove = strAbove;
        m_fPole = fPole;
    }

    public string Name
    {
        get { return m_strName; }
    }

    public string From
    {
        get { return m_strFrom; }
    }

    public string To
    {
        get { return m_strTo; }
    }

    public string Above
    {
        get { return m_strAbove; }
    }

    public float Pole
    {
        get { return m_fPole; }
    }
}

#endregion

/// <summary>
/// Summary description for CWalrus.
/// </summary>
public class CWalrus : IRigDefinition
{
    private Hashtable m_htJoints;
    private Hashtable m_htControls;
    private ArrayList m_alLimbs;

    public CWalrus()
    {
        m_htJoints = new Hashtable();
        m_htControls = new Hashtable();
        m_alLimbs = new ArrayList();
    }

    public void Define(RigDraft rig)
    {
        m_htJoints.Clear();
        m_htControls.Clear();
        m_alLimbs.Clear();
        BuildSkeleton(rig);
        BuildControls(rig);
        BuildLimbs(rig);
    }

    #region Skeleton

    private void AddJoint(string strAbove, string strName, float x, float y, float z)
    {
        Joint jntAbove = GetJoint(strAbove);
        m_htJoints.Add(strName, jntAbove.Child(strName, JointRole.Deform, new Vector3(x, y, z)));
    }

    private void BuildSkeleton(RigDraft rig)
    {
        Skeleton skl = rig.Skeleton("walrus");
        m_htJoints.Add("pelvis", skl.Root("pelvis", JointRole.Deform, new Vector3(0.0f, 0.5f, 0.0f)));
        AddJoint("pelvis", "waist", 0.0f, 0.1f, 0.4f);
        AddJoint("waist", "chest", 0.0f, 0.15f, 0.4f);
        AddJoint("chest", "neck", 0.0f, 0.25f, 0.3f);
        AddJoint("neck", "head", 0.0f, 0.15f, 0.2f);
        AddJoint("head", "jaw", 0.0f, -0.08f, 0.1f);

        for (int i = 0; i < Side.Both.Count; i++)
        {
            Side side = (Side)Side.Both[i];
            string strSide = "_" + side.ToString();
            float fSign = side.Sign;
            AddJoint("head", "tusk" + strSide, 0.06f * fSign, -0.08f, 0.15f);
            AddJoint("chest", "shoulder" + strSide, 0.35f * fSign, -0.1f, 0.0f);
            AddJoint("shoulder" + strSide, "elbow" + strSide, 0.25f * fSign, -0.1f, -0.08f);
            AddJoint("elbow" + strSide, "wrist" + strSide, 0.25f * fSign, -0.1f, 0.08f);
            AddJoint("pelvis", "hip" + strSide, 0.2f * fSign, -0.1f, -0.2f);
            AddJoint("hip" + strSide, "knee" + strSide, 0.1f * fSign, -0.05f, -0.2f);
            AddJoint("knee" + strSide, "ankle" + strSide, -0.05f * fSign, -0.05f, -0.25f);

            for (int j = 0; j < 7; j++)
            {
                string strBristle = String.Format("bristle_{0}{1}", j, strSide);
                AddJoint("head", strBristle, 0.03f * fSign * (j % 3 + 1), -0.05f - 0.01f * (j / 3), 0.2f);
            }

            m_alLimbs.Add(new CLimbInfo("front" + strSide, "shoulder" + strSide, "wrist" + strSide, "chest", 0.5f));
            m_alLimbs.Add(new CLimbInfo("back" + strSide, "hip" + strSide, "ankle" + strSide, "pelvis", 0.4f));
        }
    }

    #endregion

    #region Controls

    private void BuildControls(RigDraft rig)
    {
        m_htControls.Add("world", rig.Control("world"));

        string[] arrSpine = new string[] { "pelvis", "waist", "chest", "neck", "head", "jaw" };
        string strAbove = "world";
        foreach (string strJoint in arrSpine)
        {
            AddControl(rig, strJoint, strAbove);
            strAbove = strJoint;
        }

        // Hashtable has no order, so take a sorted copy of the keys.
        ArrayList alKeys = new ArrayList(m_htJoints.Keys);
        alKeys.Sort(StringComparer.Ordinal);
        IEnumerator enumKeys = alKeys.GetEnumerator();
        while (enumKeys.MoveNext())
        {
            string strKey = enumKeys.Current as string ?? "";
            if (strKey.StartsWith("bristle") || strKey.StartsWith("tusk"))
            {
                AddControl(rig, strKey, "head");
            }
        }
    }

    private void AddControl(RigDraft rig, string strJoint, string strAbove)
    {
        Joint jnt = GetJoint(strJoint);
        Control ctl = rig.Control("ctl_" + strJoint);
        ctl.Under(GetControl(strAbove));
        ctl.PlacedAt(jnt);
        rig.Drive(jnt).ByChannels(ctl);
        m_htControls.Add(strJoint, ctl);
    }

    #endregion

    #region Limbs

    private void BuildLimbs(RigDraft rig)
    {
        Group grpAll = rig.Group("limbs");
        foreach (CLimbInfo info in m_alLimbs)
        {
            Chain chn = rig.Chain(GetJoint(info.From), GetJoint(info.To));
            Group grp = rig.Group(String.Format("{0}_group", info.Name));
            grp.Under(grpAll);
            grp.PlacedAt(chn.Root);
            rig.Drive(grp).ByMatrix(GetControl(info.Above)).KeepingOffset();

            Copy cpyIk = chn.Copy("ik");
            cpyIk.Under(grp);
            Control ctlGoal = rig.Control("goal_" + info.Name).Under(GetControl("world")).PlacedAt(chn.Tip);
            Control ctlPole = rig.Control("pole_" + info.Name).Under(GetControl("world")).PlacedAt(chn.PolePoint(info.Pole));
            rig.TwoBone(cpyIk).Reach(ctlGoal).Face(ctlPole);

            Copy cpyFk = chn.Copy("fk");
            cpyFk.Under(grp);
            Node nodAbove = GetControl(info.Above);
            for (int i = 0; i < chn.Count; i++)
            {
                Control ctl = rig.Control("fk_" + chn[i].Name).Under(nodAbove).PlacedAt(chn[i]);
                rig.Drive(cpyFk.Of(chn[i])).ByChannels(ctl);
                nodAbove = ctl;
            }

            Switch swt = ctlGoal.Switch("fk");
            rig.Blend(chn).From(cpyIk, swt.Inverse).From(cpyFk, swt);
        }
    }

    #endregion

    private Joint GetJoint(string strName)
    {
        object? obj = m_htJoints[strName];
        if (obj == null)
            throw new ArgumentException("Unknown joint: " + strName, "strName");
        return (Joint)obj;
    }

    private Control GetControl(string strName)
    {
        object? obj = m_htControls[strName];
        if (obj is Control)
            return (Control)obj;
        throw new ArgumentException("Unknown control: " + strName, "strName");
    }
}
