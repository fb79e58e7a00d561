namespace Condyle.Analyzers.Tests.Reading.Constructs;

/// <summary>Events, whoever keeps their handlers.</summary>
public class EventTests
{
    [Fact]
    public void Of_interfaces_bases_and_parts() => Oracle.Agrees(
        """
        var bell = new Bell(); IBell contract = bell; contract.Rung += () => rig.Control("rung"); bell.Ring(); IGong gong = bell; Action struck = () => rig.Control("struck"); gong.Struck += struck; gong.Struck += struck; gong.Struck -= struck; bell.Strike();
        Horn horn = new FogHorn(); horn.Blown += () => rig.Control("blown"); horn.Blow(); Bell.Any += () => rig.Control("any"); Bell.RingAny();
        var buoy = new Buoy(); buoy.Seen += () => rig.Control("seen"); buoy.See(); rig.Control(buoy.Log);
        """,
        more: """
        public interface IBell { event Action Rung; }
        public interface IGong { event Action Struck; }
        public sealed class Bell : IBell, IGong
        {
            private Action? struck;
            public event Action? Rung;
            public static event Action? Any;
            event Action IGong.Struck { add => struck += value; remove => struck -= value; }
            public void Ring() => Rung?.Invoke();
            public void Strike() => struck?.Invoke();
            public static void RingAny() => Any?.Invoke();
        }
        public abstract class Horn { public abstract event Action? Blown; public abstract void Blow(); }
        public sealed class FogHorn : Horn { public override event Action? Blown; public override void Blow() => Blown?.Invoke(); }
        public sealed partial class Buoy { public partial event Action? Seen; }
        public sealed partial class Buoy { private Action? seen; public string Log = ""; public partial event Action? Seen { add { seen += value; Log += "added"; } remove => seen -= value; } public void See() => seen?.Invoke(); }
        """);
}
