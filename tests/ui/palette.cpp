#include "ui/theme/palette.h"

#include "tests/ui/colour_vision.h"
#include "ui/theme/contrast.h"

#include <catch2/catch.hpp>

#include <vector>

using namespace warmbench;
using namespace warmbench::literals;
using namespace warmbench::ui;

namespace {

std::vector<QColor> heatScale(const Palette& palette) {
    std::vector<QColor> scale{palette.noHeat};
    for (const QColor& colour : palette.heat) scale.push_back(colour);
    return scale;
}

std::vector<QColor> progressScale(const Palette& palette) {
    std::vector<QColor> scale{palette.slot};
    for (std::size_t stage = 1; stage < palette.progress.size(); ++stage)
        scale.push_back(palette.progress[stage]);
    return scale;
}

/// A difference in CIELAB that stays plain between large patches: some eight times the just noticeable 2.3.
/// Source of that: Mahy, Van Eycken, Oosterlinck, Color Research & Application 19 (1994) 105-121.
constexpr double plainDifference = 8;

} // namespace

TEST_CASE("Contrast is that of WCAG: black on white 21 to 1, the first grey that passes on white #767676") {
    CHECK(contrast(Qt::black, Qt::white) == Approx(21));
    CHECK(contrast(QColor(0x76, 0x76, 0x76), Qt::white) == Approx(4.54).margin(0.01));
    CHECK(contrast(Qt::white, Qt::white) == Approx(1));
}

TEST_CASE("Every text of both themes reaches 4.5 to 1 on every ground that it stands on") {
    for (const Palette* palette : {&lightPalette(), &darkPalette()}) {
        for (const QColor& ground : {palette->paper, palette->panel, palette->floor, palette->slot}) {
            CHECK(contrast(palette->ink, ground) >= readableContrast);
            CHECK(contrast(palette->quietInk, ground) >= readableContrast);
            CHECK(contrast(palette->trouble, ground) >= readableContrast);
            CHECK(contrast(palette->accent, ground) >= readableContrast);
        }
        CHECK(contrast(palette->ink, palette->accentGround) >= readableContrast);
        CHECK(contrast(palette->quietInk, palette->accentGround) >= readableContrast);
        CHECK(contrast(palette->trouble, palette->troubleGround) >= readableContrast);
        CHECK(contrast(palette->textOn(palette->accent), palette->accent) >= readableContrast);
        for (const QColor& ground : heatScale(*palette))
            CHECK(contrast(palette->textOn(ground), ground) >= readableContrast);
        for (const QColor& ground : progressScale(*palette))
            CHECK(contrast(palette->textOn(ground), ground) >= readableContrast);
        for (int tenths = 150; tenths <= 240; ++tenths) {
            const QColor ground = palette->heatAt(Celsius{tenths});
            CHECK(contrast(palette->textOn(ground), ground) >= readableContrast);
        }
    }
}

TEST_CASE("The simulations leave greys as they are (rows of Vienot 1999 and Brettel 1997 add up to one)") {
    for (const Vision vision : {Vision::Protan, Vision::Deutan, Vision::Tritan})
        for (const int grey : {0, 90, 200, 255})
            CHECK(labDistance(seenBy(vision, QColor(grey, grey, grey)), QColor(grey, grey, grey)) < 1);
    CHECK(labDistance(seenBy(Vision::Deutan, Qt::red), Qt::red) > 30);
}

TEST_CASE("Neighbours on the heat and progress scales stay apart for every kind of colour vision") {
    for (const Palette* palette : {&lightPalette(), &darkPalette()})
        for (const auto& scale : {heatScale(*palette), progressScale(*palette)})
            for (std::size_t i = 1; i < scale.size(); ++i)
                for (const Vision vision : {Vision::Usual, Vision::Protan, Vision::Deutan, Vision::Tritan}) {
                    CAPTURE(palette->dark, i, static_cast<int>(vision));
                    CHECK(labDistance(seenBy(vision, scale[i - 1]), seenBy(vision, scale[i])) >=
                          plainDifference);
                }
}

TEST_CASE("Both scales run in lightness, away from the ground, in both themes") {
    for (const auto& scale : {heatScale(lightPalette()), progressScale(lightPalette())})
        for (std::size_t i = 1; i < scale.size(); ++i) CHECK(luminance(scale[i]) < luminance(scale[i - 1]));
    for (const auto& scale : {heatScale(darkPalette()), progressScale(darkPalette())})
        for (std::size_t i = 1; i < scale.size(); ++i) CHECK(luminance(scale[i]) > luminance(scale[i - 1]));
}

TEST_CASE("Heat between two steps of the scale lies between their colours, beyond its ends it stays") {
    const Palette& palette = lightPalette();
    CHECK(palette.heatAt(18_degC) == palette.heat[1]);
    CHECK(palette.heatAt(5_degC) == palette.heat[0]);
    CHECK(palette.heatAt(30_degC) == palette.heat[3]);
    CHECK(palette.heatAt(std::nullopt) == palette.noHeat);
    const double between = luminance(palette.heatAt(16.5_degC));
    CHECK(between < luminance(palette.heat[0]));
    CHECK(between > luminance(palette.heat[1]));
}
