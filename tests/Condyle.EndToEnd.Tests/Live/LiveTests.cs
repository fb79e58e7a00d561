using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Live;

/// <summary>What people see while they type in a project of 200 rigs that share helpers across files.</summary>
public abstract class LiveTests
{
    private static readonly string Rig = Fleet.Rig(7);

    /// <summary>The client, with the project open.</summary>
    private protected abstract Task<ITypedInto> ClientAsync();

    [SkippableFact]
    public async Task A_slip_in_a_definition_shows_in_its_file_and_goes_when_it_is_mended()
    {
        var client = await ClientAsync();
        await ShowsWhile(client, Rig, "\"hold_group\"", "\"hold\"", Rig, "CDY1001 \"hold\"");
    }

    [SkippableFact]
    public async Task A_slip_in_a_helper_of_another_file_shows_there()
    {
        var client = await ClientAsync();
        await ShowsWhile(client, Fleet.Names, "_{number}_group", "_{number}_part", Fleet.Names, "CDY1001 $\"{part}_{number}_part\"");
    }

    [SkippableFact]
    public async Task An_edit_in_a_helper_shows_in_the_definitions_that_it_makes_wrong()
    {
        var client = await ClientAsync();
        await ShowsWhile(client, Fleet.Helpers, "rig.Group(name + \"_group\")", "rig.Group(name)", Rig, "CDY1001 \"hatch\"");
    }

    [SkippableFact]
    public async Task An_edit_in_an_unrelated_file_changes_nothing()
    {
        var client = await ClientAsync();
        await client.TypeAsync(Fleet.Names, "_{number}_group", "_{number}_part");
        Assert.Single(await client.SquigglesInAsync(Fleet.Names));
        await client.TypeAsync(Fleet.Unrelated, "12.4", "12.5");

        Assert.Empty(await client.SquigglesInAsync(Fleet.Unrelated));
        Assert.Single(await client.SquigglesInAsync(Fleet.Names));
        await client.TypeAsync(Fleet.Names, "_{number}_part", "_{number}_group");
        await client.TypeAsync(Fleet.Unrelated, "12.5", "12.4");
        Assert.Empty(await client.SquigglesInAsync(Fleet.Names));
    }

    [SkippableFact]
    public async Task A_helper_that_is_edited_is_read_for_a_bounded_number_of_rigs()
    {
        var client = await ClientAsync();
        Assert.Empty(await client.SquigglesInAsync(Fleet.Helpers));
        var first = Fleet.Rig(0);

        await ShowsWhile(client, first, "isBare: false", "isBare: true", Fleet.Helpers, "CDY1001 \"mast\"");
    }

    [SkippableFact]
    public async Task Half_a_sentence_takes_no_squiggle_of_another_file_away()
    {
        var client = await ClientAsync();
        await client.TypeAsync(Fleet.Names, "_{number}_group", "_{number}_part");
        foreach (var (over, text) in new[] { ("rig.Control(\"hull\");", "rig.Control("), ("rig.Control(", "rig."), ("rig.", "rig.Control(\"hull\");") })
        {
            await client.TypeAsync(Rig, "var hull = " + over, "var hull = " + text);
            Assert.Empty(await client.SquigglesInAsync(Rig));
            Assert.Single(await client.SquigglesInAsync(Fleet.Names));
        }

        await client.TypeAsync(Fleet.Names, "_{number}_part", "_{number}_group");
        Assert.Empty(await client.SquigglesInAsync(Fleet.Names));
    }

    /// <summary>A squiggle is there, alone in its file, from an edit until the edit is taken back.</summary>
    private static async Task ShowsWhile(ITypedInto client, string edited, string right, string wrong, string shownIn, string squiggle)
    {
        Assert.Empty(await client.SquigglesInAsync(shownIn));
        await client.TypeAsync(edited, right, wrong);
        Assert.Equal(squiggle, Assert.Single(await client.SquigglesInAsync(shownIn)).ToString());
        if (edited != shownIn)
            Assert.Empty(await client.SquigglesInAsync(edited));
        await client.TypeAsync(edited, wrong, right);
        Assert.Empty(await client.SquigglesInAsync(shownIn));
    }
}
