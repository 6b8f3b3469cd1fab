#include "ui/theme/palette.h"

#include "ui/theme/contrast.h"

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

/// Set-points at which the heat scale is given, in tenths of a degree.
constexpr std::array<std::int64_t, 4> heatStops{150, 180, 210, 240};

QColor rgb(unsigned value) {
    return QColor::fromRgb(value | 0xFF000000U);
}

Palette makeLight() {
    Palette p;
    p.paper = rgb(0xF6F4EE);
    p.panel = rgb(0xFFFFFF);
    p.rule = rgb(0xDDD8CC);
    p.ink = rgb(0x26302E);
    p.quietInk = rgb(0x5F6965);
    p.deepInk = rgb(0x000000);
    p.paleInk = rgb(0xFFFFFF);
    p.floor = rgb(0xFBF9F5);
    p.bench = rgb(0xE7DFCF);
    p.benchEdge = rgb(0xB3A68F);
    p.slot = rgb(0xFFFFFF);
    p.accent = rgb(0x2E6F69);
    p.accentGround = rgb(0xE3EFED);
    p.trouble = rgb(0x9B2C1F);
    p.troubleGround = rgb(0xFBECE9);
    p.noHeat = rgb(0xEEF1F0);
    p.heat = {rgb(0xF2DFB0), rgb(0xE8C27F), rgb(0xDA9C55), rgb(0xBC7138)};
    p.progress = {rgb(0x2E6F69), rgb(0xC9DADF), rgb(0x94B8BC), rgb(0x549389), rgb(0x2E6F69), rgb(0x154B47)};
    return p;
}

Palette makeDark() {
    Palette p;
    p.dark = true;
    p.paper = rgb(0x151A19);
    p.panel = rgb(0x1D2322);
    p.rule = rgb(0x3A4441);
    p.ink = rgb(0xE4E9E6);
    p.quietInk = rgb(0xA2ACA8);
    p.deepInk = rgb(0xFFFFFF);
    p.paleInk = rgb(0x000000);
    p.floor = rgb(0x1A201F);
    p.bench = rgb(0x35322A);
    p.benchEdge = rgb(0x6B6454);
    p.slot = rgb(0x202726);
    p.accent = rgb(0x7CC4B8);
    p.accentGround = rgb(0x24403C);
    p.trouble = rgb(0xF09A8C);
    p.troubleGround = rgb(0x43211C);
    p.noHeat = rgb(0x333B3A);
    p.heat = {rgb(0x5B4C2B), rgb(0x806331), rgb(0xAC7B3C), rgb(0xDB9C58)};
    p.progress = {rgb(0x7CC4B8), rgb(0x37515A), rgb(0x4D7A80), rgb(0x69A79C), rgb(0x94CFC2), rgb(0xCDF2E8)};
    return p;
}

} // namespace

QColor mix(const QColor& a, const QColor& b, double share) {
    const auto between = [&](int from, int to) {
        return static_cast<int>(std::lround(from + (to - from) * share));
    };
    return {between(a.red(), b.red()), between(a.green(), b.green()), between(a.blue(), b.blue())};
}

QColor Palette::heatAt(std::optional<Celsius> setPoint) const {
    if (!setPoint) return noHeat;
    const std::int64_t tenths = std::clamp(setPoint->parts, heatStops.front(), heatStops.back());
    std::size_t above = 1;
    while (heatStops[above] < tenths) ++above;
    const double share = static_cast<double>(tenths - heatStops[above - 1]) /
                         static_cast<double>(heatStops[above] - heatStops[above - 1]);
    return mix(heat[above - 1], heat[above], share);
}

QColor Palette::textOn(const QColor& ground) const {
    if (contrast(ink, ground) >= readableContrast) return ink;
    return contrast(deepInk, ground) >= contrast(paleInk, ground) ? deepInk : paleInk;
}

const Palette& lightPalette() {
    static const Palette palette = makeLight();
    return palette;
}

const Palette& darkPalette() {
    static const Palette palette = makeDark();
    return palette;
}

} // namespace warmbench::ui
