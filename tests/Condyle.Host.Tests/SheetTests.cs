using System.Numerics;
using System.Text.Json;
using System.Xml.Linq;
using Condyle.Host.Sheets;

namespace Condyle.Host.Tests;

/// <summary>What a rig is made of, as lines, picture and model file, and what changed between two builds.</summary>
public sealed class SheetTests
{
    [Fact]
    public void List_tells_what_rigs_are_made_of()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(HoistClips), typeof(Leak));
        Assert.Equal(1, program.Run("list"));
        Assert.Contains("Hoist: 2 joints, 2 controls, 0 switches, 0 dials, 0 choices, 4 nodes in all", program.Output, StringComparison.Ordinal);
        Assert.Contains("delivered in hoist.gltf; clips: unload", program.Output, StringComparison.Ordinal);
        Assert.Contains("Leak: The rig 'Leak' can't be built", program.Output, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("list", "--rig", "Hoist", "--json"));
        Assert.Equal(2, JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0].GetProperty("controls").GetInt32());
    }

    [Fact]
    public void Tree_shows_what_hangs_under_what_and_what_moves_it()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(0, program.Run("tree"));
        Assert.Equal("""
            Hoist
              jib  joint
                  <- by channels: slew
                hook  joint
                    <- by channels: drop
              slew  control  [turn Y -90° to 90°]
                drop  control  [move Y -1 m to 0 m]

            """, program.Output, ignoreLineEndingDifferences: true);
        Assert.Equal(0, program.Run("tree", "--json"));
        Assert.Equal("by channels", JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0].GetProperty("relations")[0].GetProperty("how").GetString());
    }

    [Fact]
    public void Every_kind_of_drive_is_told()
    {
        var tree = SheetText.Of(SheetWriter.Of(Rig.Examine(new Derrick())));
        Assert.Contains("<- blend: ik_lower × (1 − tip.fk), fk_lower × tip.fk", tree, StringComparison.Ordinal);
        Assert.Contains("<- two-bone IK: tip (goal), pole (pole)", tree, StringComparison.Ordinal);
        Assert.Contains("<- aim: tip (target)", tree, StringComparison.Ordinal);
        Assert.Contains("<- by matrix: base_control", tree, StringComparison.Ordinal);
        Assert.Contains("<- space: base_control (in base), spare (in yard)", tree, StringComparison.Ordinal);
        Assert.Contains("<- response, turn X: tip.swing; 0: 0, 1: 30", tree, StringComparison.Ordinal);
        Assert.Contains("[switch fk, at rest 0; dial swing, 0 to 1, at rest 0; choice space among base, yard]", tree, StringComparison.Ordinal);
    }

    [Fact]
    public void A_curve_that_goes_on_beyond_its_keys_and_how_steep_it_is_are_told()
    {
        var tree = SheetText.Of(SheetWriter.Of(Rig.Examine(new Winder())));
        Assert.Contains("<- response, turn Y: crank_control.wind; 0: 0, 1: 360 (slope 90), going on beyond", tree, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_makes_no_line_of_its_own() =>
        Assert.Contains(@"  winch\r\nerror CDY9999: no  control", SheetText.Of(SheetWriter.Of(Rig.Examine(new TwoLines()))), StringComparison.Ordinal);

    [Fact]
    public void The_picture_has_room_for_what_explains_its_colours()
    {
        var picture = SheetPicture.Of(SheetWriter.Of(Rig.Examine(new Winder())));
        var width = int.Parse(picture.Split("width=\"")[1].Split('"')[0], System.Globalization.CultureInfo.InvariantCulture);
        var last = picture.Split("<text x=\"").Single(text => text.Contains("solver, aim, twist, falloff", StringComparison.Ordinal));
        Assert.True(int.Parse(last.Split('"')[0], System.Globalization.CultureInfo.InvariantCulture) + ("solver, aim, twist, falloff".Length * 6) < width, picture[..200]);
    }

    [Fact]
    public void Labels_and_limits_are_shown_as_lines_in_the_picture_and_as_data()
    {
        using var program = new TestProgram(typeof(Capstan));
        Assert.Equal(0, program.Run("tree"));
        Assert.Equal("""
            Capstan
              drum  joint
                  <- by channels: bar
              bar  control  [turn X -10° to 10°, Y -∞ to ∞; move Z 0 m to 0.5 m; switch brake, at rest 0; choice gear among slow, fast]
                free_label  label  [shows FREE]
                    <- shown by: bar.brake (inverse)
                held_label  label  [shows HELD]
                    <- shown by: bar.brake
              fast_label  label  [shows FAST]
                  <- shown by: bar.gear (fast)
              both_label  label  [shows BOTH]
                  <- shown by: bar.brake, bar.gear (fast); bar.brake·bar.gear=fast
              plain_label  label  [shows PLAIN]

            """, program.Output, ignoreLineEndingDifferences: true);

        Assert.Equal(0, program.Run("tree", "--json"));
        var rig = JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0];
        var held = rig.GetProperty("nodes").EnumerateArray().Single(node => node.GetProperty("name").GetString() == "held_label");
        Assert.Equal("label bar shows HELD", $"{held.GetProperty("kind")} {held.GetProperty("under")} shows {held.GetProperty("shows")}");
        var bar = rig.GetProperty("nodes")[1];
        Assert.Equal("""{"channel":"TurnX","fromMetres":null,"toMetres":null,"fromDegrees":-10,"toDegrees":10}""", Line(bar.GetProperty("limits")[0]));
        Assert.Equal("""{"channel":"TurnY","fromMetres":null,"toMetres":null,"fromDegrees":null,"toDegrees":null}""", Line(bar.GetProperty("limits")[1]));
        Assert.Equal("""{"channel":"MoveZ","fromMetres":0,"toMetres":0.5,"fromDegrees":null,"toDegrees":null}""", Line(bar.GetProperty("limits")[2]));
        Assert.Equal("""{"kind":"switch","name":"brake","atRest":0,"from":null,"to":null,"unit":null,"options":null}""", Line(bar.GetProperty("settings")[0]));
        Assert.Equal("""{"kind":"choice","name":"gear","atRest":null,"from":null,"to":null,"unit":null,"options":["slow","fast"]}""", Line(bar.GetProperty("settings")[1]));

        Assert.Equal(0, program.Run("tree", "--out", program["capstan.svg"]));
        var texts = XDocument.Load(program["capstan.svg"]).Root!.Elements().Select(text => text.Value).ToList();
        Assert.Contains("held_label · shows HELD", texts);
        Assert.Contains("bar · control · turn X -10° to 10°, Y -∞ to ∞; move Z 0 m to 0.5 m", texts);

        Assert.Equal(0, program.Run("tree", "--out", program["capstan.json"]));
        Assert.Equal(0, program.Run("compare", program["capstan.json"]));
        Assert.Contains("nothing changed", program.Output, StringComparison.Ordinal);
    }

    private static string Line(JsonElement element) => JsonSerializer.Serialize(element);

    [Fact]
    public void A_picture_stands_alone_with_a_row_for_every_node_and_an_arc_for_every_source()
    {
        using var program = new TestProgram(typeof(Derrick));
        Assert.Equal(0, program.Run("tree", "--out", program["derrick.svg"]));
        var sheet = SheetWriter.Of(Rig.Examine(new Derrick()));
        var svg = XDocument.Load(program["derrick.svg"]).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        var texts = svg.Elements(ns + "text").Select(text => text.Value).ToList();
        Assert.All(sheet.Nodes, node => Assert.Contains(texts, text => text == node.Name || text.StartsWith(node.Name + " · ", StringComparison.Ordinal)));
        Assert.Equal(sheet.Relations.Sum(relation => relation.Sources.Count), svg.Descendants(ns + "title").Count());
        Assert.DoesNotContain("href", File.ReadAllText(program["derrick.svg"]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_holds_every_name_whatever_is_in_it()
    {
        using var program = new TestProgram(typeof(Graffiti));
        Assert.Equal(0, program.Run("tree", "--out", program["wall.svg"]));
        Assert.Contains(XDocument.Load(program["wall.svg"]).Root!.Elements(), text => text.Value.StartsWith("<script>'\uFFFD\"</script>", StringComparison.Ordinal));
    }

    [Fact]
    public void A_build_compared_with_its_own_model_file_has_no_change()
    {
        using var program = new TestProgram(typeof(Derrick));
        Assert.Equal(0, program.Run("tree", "--out", program["derrick.json"]));
        Assert.Equal(0, program.Run("compare", program["derrick.json"]));
        Assert.Equal($"Derrick: nothing changed since {program["derrick.json"]}", program.Output.Trim());
    }

    [Fact]
    public void A_model_file_of_a_rig_that_the_project_doesnt_have_is_compared_with_the_one_that_is_named()
    {
        using var program = new TestProgram(typeof(Derrick));
        Assert.Equal(0, program.Run("tree", "--out", program["derrick.json"], "--json"));
        Assert.Equal(program["derrick.json"], JsonDocument.Parse(program.Output).RootElement.GetProperty("file").GetString());
        program.Types = [typeof(LongDerrick)];
        Assert.Equal(2, program.Run("compare", program["derrick.json"]));
        Assert.Equal($"error: {program["derrick.json"]}: its rig 'Derrick' is none of this project. Say with --rig what to compare it with. The nearest: 'LongDerrick'.", program.Error.Trim());
        Assert.Equal(0, program.Run("compare", program["derrick.json"], "--rig", "LongDerrick"));
        Assert.Contains($"since {program["derrick.json"]}, which has Derrick", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_changed_is_told_as_a_reviewer_reads_it()
    {
        using var program = new TestProgram(typeof(Derrick));
        program.Run("tree", "--out", program["before.json"]);
        program.Types = [typeof(LongDerrick)];
        program.Run("tree", "--out", program["after.json"]);
        Assert.Equal(0, program.Run("compare", program["before.json"], program["after.json"]));
        string[] told =
        [
            "~ hook: rest moved by 200 mm",
            "+ spare_2: control",
            "~ tip: rest moved by 200 mm; limit turn Y -20° to 20° added",
            "~ hook: blend; from ik_hook: weight (1 − tip.fk) → tip.fk",
        ];
        Assert.All(told, line => Assert.Contains(line, program.Output, StringComparison.Ordinal));
        Assert.Equal(0, program.Run("compare", program["before.json"], program["after.json"], "--json"));
        var changes = JsonDocument.Parse(program.Output).RootElement.GetProperty("changes");
        Assert.Contains(changes.EnumerateArray(), change => change.GetProperty("kind").GetString() == "added" && change.GetProperty("name").GetString() == "spare_2");

        // The other way round, what was added was removed.
        program.Run("compare", program["after.json"], program["before.json"]);
        Assert.Contains("- spare_2: control", program.Output, StringComparison.Ordinal);
    }

    /// <summary>What a name is used by goes with it.</summary>
    [Fact]
    public void Another_name_for_the_same_is_told_as_that_alone()
    {
        using var program = new TestProgram(typeof(Derrick));
        program.Run("tree", "--out", program["before.json"]);
        program.Types = [typeof(RenamedDerrick)];
        program.Run("tree", "--out", program["after.json"]);
        Assert.Equal(0, program.Run("compare", program["before.json"], program["after.json"]));
        Assert.Equal(
            [$"RenamedDerrick: 5 changes since {program["before.json"]}, which has Derrick", "  nodes", "    ~ load: was 'hook'", "    ~ ik_load: was 'ik_hook'", "    ~ fk_load: was 'fk_hook'", "    ~ turn_load: was 'turn_hook'", "    ~ grip: was 'tip'"],
            program.Output.TrimEnd().Split('\n').Select(line => line.TrimEnd()));
    }

    [Fact]
    public void Of_two_that_could_be_meant_neither_is_taken_for_the_other()
    {
        var before = SheetWriter.Of(Rig.Examine(new Pair("left", "right")));
        var kinds = SheetComparison.Of(before, SheetWriter.Of(Rig.Examine(new Pair("fore", "aft")))).Select(change => $"{change.Kind} {change.Name}");
        Assert.Equal(["added fore", "added aft", "removed left", "removed right"], kinds);
        Assert.Equal(["renamed aft: was 'right'"], SheetComparison.Of(before, SheetWriter.Of(Rig.Examine(new Pair("left", "aft")))).Select(change => $"{change.Kind} {change.Name}: {change.Details[0]}"));
    }

    /// <summary>One name begins with the other, and what a team's names are made of is theirs to say.</summary>
    [Theory]
    [InlineData("grab", "hook-left", "renamed grab: was 'hook'")]
    [InlineData("hook", "hook:aft", "renamed hook:aft: was 'hook-left'")]
    public void A_name_is_a_name_whatever_is_in_it(string first, string second, string told) => Assert.Equal(
        [told], SheetComparison.Of(SheetWriter.Of(Rig.Examine(new Slung("hook", "hook-left"))), SheetWriter.Of(Rig.Examine(new Slung(first, second)))).Select(change => $"{change.Kind} {change.Name}: {string.Join("; ", change.Details)}"));

    [Theory]
    [InlineData("[]")]
    [InlineData("{ \"rig\": \"Hoist\" }")]
    [InlineData("{ \"rig\": null, \"nodes\": [], \"relations\": [] }")]
    [InlineData("{ \"rig\": \"Hoist\", \"nodes\": [null], \"relations\": [] }")]
    [InlineData("{ \"rig\": \"Hoist\", \"nodes\": [], \"relations\": [], \"more\": 1 }")]
    [InlineData("not JSON")]
    public void A_file_that_is_no_model_is_told(string text)
    {
        using var program = new TestProgram(typeof(Hoist));
        var file = program.Write("model.json", text);
        Assert.Equal(2, program.Run("compare", file));
        Assert.StartsWith($"error: {file}:", program.Error, StringComparison.Ordinal);
        Assert.Contains("it is no model file", program.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Condyle", program.Error, StringComparison.Ordinal);
        Assert.Single(program.Error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void Files_that_cant_be_are_told()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(Derrick));
        Assert.Equal(2, program.Run("compare", program["nowhere.json"]));
        Assert.Contains("the file isn't there", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("tree", "--rig", "Hoist", "--out", program["hoist.png"]));
        Assert.Contains("Name the file .svg (a picture), .txt (lines) or .json (a model file for compare)", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("tree", "--out", program["both.svg"]));
        Assert.Contains("one rig goes into a file, and there are 2", program.Error, StringComparison.Ordinal);
    }
}

/// <summary>Two controls that are alike but for their names.</summary>
internal sealed class Pair(string first, string second) : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        rig.Control(first);
        rig.Control(second);
    }
}

internal sealed class Slung(string first, string second) : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var load = rig.Skeleton("sling").Root("load");
        var (fore, aft) = (rig.Control(first), rig.Control(second));
        var slack = aft.Switch("slack");
        rig.Blend(load).From(fore, slack.Inverse).From(aft, slack);
    }
}

/// <summary>A bit of everything that moves a node.</summary>
public class Derrick : IRigDefinition
{
    /// <summary>How long its upper boom is.</summary>
    protected virtual float Length => 1;

    /// <summary>The name of the joint at its end.</summary>
    protected virtual string Hook => "hook";

    /// <summary>The name of the control there.</summary>
    protected virtual string Tip => "tip";

    public void Define(RigDraft rig)
    {
        var mast = rig.Skeleton("derrick").Root("mast");
        var lower = mast.Child("lower", at: new Vector3(0, 1, 0));
        var upper = lower.Child("upper", at: new Vector3(0, 0.8f, 0.3f));
        var hook = upper.Child(Hook, at: new Vector3(0, 0, Length));
        var lamp = mast.Child("lamp", at: new Vector3(0, 2, 0));

        var systems = rig.Group("systems_group");
        var foot = rig.Control("base_control").PlacedAt(mast);
        rig.Drive(mast).ByChannels(foot);
        rig.Drive(systems).ByMatrix(foot);
        var boom = rig.Chain(lower, hook);
        var (ik, fk) = (boom.Copy("ik").Under(systems), boom.Copy("fk").Under(systems));
        var spare = rig.Control("spare");
        var tip = rig.Control(Tip).PlacedAt(hook);
        var pole = rig.Control("pole").Under(foot).PlacedAt(ik.PolePoint(0.5f));
        rig.TwoBone(ik).Reach(tip).Face(pole);
        foreach (var joint in boom)
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint.Name}").Under(foot).PlacedAt(joint));
        var amount = tip.Switch("fk");
        rig.Blend(boom).From(ik, Weight(amount)).From(fk, amount);
        rig.Aim(lamp).At(tip);
        rig.Response(tip.Dial("swing", 0, 1)).Key(0, 0).Key(1, 30).OntoTurn(rig.Group("sway_group").Under(foot), Axis.X);
        rig.Space(tip).In("base", foot).In("yard", spare);
        More(rig, tip);
    }

    /// <summary>The weight of the IK copy.</summary>
    protected virtual Weight Weight(Switch amount) => amount.Inverse;

    /// <summary>What else there is.</summary>
    protected virtual void More(RigDraft rig, Control tip)
    {
    }
}

/// <summary>A drum with limits and labels of every kind.</summary>
public sealed class Capstan : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var drum = rig.Skeleton("capstan").Root("drum");
        var bar = rig.Control("bar").PlacedAt(drum).LimitTurn(Axis.X, -10, 10).LimitTurn(Axis.Y, float.NegativeInfinity, float.PositiveInfinity).LimitMove(Axis.Z, 0, 0.5f);
        rig.Drive(drum).ByChannels(bar);
        var (brake, gear) = (bar.Switch("brake"), bar.Choice("gear", ["slow", "fast"]));
        rig.Label("free_label", "FREE").Under(bar).ShownBy(brake.Inverse);
        rig.Label("held_label", "HELD").Under(bar).ShownBy(brake);
        rig.Label("fast_label", "FAST").ShownBy(gear.Is("fast"));
        rig.Label("both_label", "BOTH").ShownBy(brake * gear.Is("fast"));
        rig.Label("plain_label", "PLAIN");
    }
}

/// <summary>The same a week later: longer, and with a slip.</summary>
public sealed class LongDerrick : Derrick
{
    protected override float Length => 1.2f;

    protected override Weight Weight(Switch amount) => amount;

    protected override void More(RigDraft rig, Control tip)
    {
        rig.Control("spare_2");
        tip.LimitTurn(Axis.Y, -20, 20);
    }
}

/// <summary>The same by other names.</summary>
public sealed class RenamedDerrick : Derrick
{
    protected override string Hook => "load";

    protected override string Tip => "grip";
}

/// <summary>A control whose name nobody should write.</summary>
public sealed class Graffiti : IRigDefinition
{
    public void Define(RigDraft rig) => rig.Control("<script>'\u0001\"</script>");
}

/// <summary>A drum that a crank winds by a dial.</summary>
internal sealed class Winder : IRigDefinition
{
    public void Define(RigDraft rig) => rig.Response(rig.Control("crank_control").Dial("wind", 0, 1)).Key(0, 0).Key(1, 360, slope: 90).Continued().OntoTurn(rig.Group("drum_group"), Axis.Y);
}

/// <summary>A control whose name has two lines.</summary>
internal sealed class TwoLines : IRigDefinition
{
    public void Define(RigDraft rig) => rig.Control("winch\r\nerror CDY9999: no");
}
