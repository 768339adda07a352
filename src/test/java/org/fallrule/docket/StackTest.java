package org.fallrule.docket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StackTest {
    @TempDir
    Path place;

    private Path stack;

    @BeforeEach
    void threeSitesAndAFolderOfPhotos() throws IOException {
        stack = place.resolve("stack");
        SiteOnDisk.in(stack, "plan-b").with("site.yaml", "");
        SiteOnDisk.in(stack, "plan-a").with("lot.geojson", "{}");
        SiteOnDisk.in(stack, "plan-c").with("Site.YML", "");
        SiteOnDisk.in(stack, "photos").with("north.txt", "");
        SiteOnDisk.in(stack, ".hidden").with("site.yaml", "");
    }

    private Stack found(Object... words) {
        return Stack.of(Stream.of(words).map(String::valueOf).toList(), Optional.empty());
    }

    private static List<String> folders(Stack stack) {
        return stack.sites().stream().map(Submittal::folder).toList();
    }

    private static List<String> notices(Stack stack) {
        return stack.notices().stream().map(Object::toString).toList();
    }

    @Test
    void oneSiteIsSingle() {
        Stack one = found(stack.resolve("plan-b"));

        assertThat(one.single()).isTrue();
        assertThat(folders(one)).containsExactly("plan-b");
    }

    @Test
    void aFolderOfFoldersGivesItsSitesByNameAndTellsTheRest() {
        Stack all = found(stack);

        assertThat(all.single()).isFalse();
        assertThat(folders(all)).containsExactly("plan-a", "plan-b", "plan-c");
        assertThat(notices(all))
                .containsExactly(stack.resolve("photos")
                        + ": holds no site.yaml and no file that is named for a role, and was not checked");
    }

    @Test
    void aPatternGivesTheFoldersThatMatch() {
        assertThat(folders(found(stack + "/plan-[ab]"))).containsExactly("plan-a", "plan-b");
        assertThat(folders(found(place + "/st*/plan-{a,c}"))).containsExactly("plan-a", "plan-c");
        assertThat(found(stack + "/plan-a*").single()).isFalse();
    }

    @Test
    void aPatternThatMatchesNothingIsAFault() {
        assertThatThrownBy(() -> found(stack + "/plot-*"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("plot-*: matches no folder");
        assertThatThrownBy(() -> found(stack + "/plan-[a"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("is no pattern that can be read");
    }

    @Test
    void aFolderWhoseNameLooksLikeAPatternIsThatFolder() {
        SiteOnDisk.in(stack, "lot [3]").with("site.yaml", "");

        assertThat(folders(found(stack.resolve("lot [3]")))).containsExactly("lot [3]");
    }

    @Test
    void aSiteFoundTwiceIsCheckedOnceAlsoThroughALink() throws IOException {
        Path link = Files.createSymbolicLink(place.resolve("link"), stack.resolve("plan-b"));

        Stack all = found(stack, stack.resolve("plan-b"), link);

        assertThat(folders(all)).containsExactly("plan-a", "plan-b", "plan-c");
        assertThat(notices(all))
                .contains(
                        stack.resolve("plan-b") + ": is named twice, and was checked once",
                        link + ": is named twice, and was checked once");
    }

    @Test
    void sitesOfOneNameHaveFoldersOfTheirOwnAlsoWhereCapitalsDoNotCount() {
        SiteOnDisk.in(place.resolve("north"), "plan-a").with("site.yaml", "");
        SiteOnDisk.in(place.resolve("south"), "Plan-A").with("site.yaml", "");
        SiteOnDisk.in(place.resolve("south"), "plan-a-2").with("site.yaml", "");

        Stack all = found(stack.resolve("plan-a"), place.resolve("north"), place.resolve("south"));

        assertThat(folders(all)).containsExactly("plan-a", "plan-a-2", "Plan-A-3", "plan-a-2-2");
        assertThat(notices(all)).hasSize(3).allMatch(each -> each.contains("its report is written to"));
        assertThat(folders(found(stack.resolve("plan-a"), place.resolve("north"), place.resolve("south"))))
                .isEqualTo(folders(all));
    }

    @Test
    void aSiteDoesNotTakeTheNameOfTheIndex() {
        SiteOnDisk.in(stack, "index.html").with("site.yaml", "");

        assertThat(folders(found(stack))).doesNotContain("index.html").contains("index.html-2");
    }

    @Test
    void theOutputFolderWithinTheInputIsNotLookedInto() {
        SiteOnDisk.in(stack, "reports").with("lot.geojson", "{}");

        Stack all = Stack.of(List.of(stack.toString()), Optional.of(stack.resolve("reports")));

        assertThat(folders(all)).containsExactly("plan-a", "plan-b", "plan-c");
        assertThat(notices(all))
                .contains(stack.resolve("reports") + ": is where the reports go, and is not looked into");
    }

    @Test
    void aFolderWithASitesFileIsNoSiteThoughItsSharedLayersAreNamedForRoles() {
        SiteOnDisk.in(place, "stack")
                .with("sites.yaml", "shared: {lot: lot.geojson}")
                .with("lot.geojson", "{}");

        assertThat(folders(found(stack))).containsExactly("plan-a", "plan-b", "plan-c");
    }

    @Test
    void whatIsNoFolderAtAllIsLeftForTheReadingToSay() {
        Stack none = found(place.resolve("nowhere"));

        assertThat(none.single()).isTrue();
        assertThat(folders(none)).containsExactly("nowhere");
    }
}
