#pragma once

#include "core/book/progress.h"
#include "core/quantity/quantity.h"

#include <QColor>

#include <array>
#include <optional>

namespace warmbench::ui {

/// The colours of one theme. Heat is a warm scale by set-point, progress a cool scale that goes on as roots
/// grow; both run in lightness, away from the ground, so that they hold for every kind of colour vision.
struct Palette {
    bool dark = false;
    QColor paper;    ///< behind everything
    QColor panel;    ///< of panels, menus, fields
    QColor rule;     ///< lines between things
    QColor ink;      ///< text
    QColor quietInk; ///< text of second rank
    QColor deepInk;  ///< text on strong colours, where ink has too little contrast
    QColor paleInk;  ///< the opposite of deepInk
    QColor floor;    ///< of a house
    QColor bench;    ///< the table itself
    QColor benchEdge;
    QColor slot;   ///< a free slot
    QColor accent; ///< what can be done, what is selected
    QColor accentGround;
    QColor trouble; ///< always with words
    QColor troubleGround;
    QColor noHeat;
    std::array<QColor, 4> heat;     ///< at 15, 18, 21 and 24 °C
    std::array<QColor, 6> progress; ///< by Progress; that of planned is its outline

    /// The heat scale at a set-point, in between by interpolation, beyond the ends the end; noHeat for none.
    [[nodiscard]] QColor heatAt(std::optional<Celsius> setPoint) const;
    [[nodiscard]] QColor of(Progress stage) const { return progress[static_cast<std::size_t>(stage)]; }
    /// A text colour that reaches 4.5 to 1 on a ground of this palette: ink where it does, else the stronger
    /// of deepInk and paleInk.
    [[nodiscard]] QColor textOn(const QColor& ground) const;
};

/// The colour at a share of the way from a to b, 0 to 1.
[[nodiscard]] QColor mix(const QColor& a, const QColor& b, double share);

[[nodiscard]] const Palette& lightPalette();
[[nodiscard]] const Palette& darkPalette();

} // namespace warmbench::ui
