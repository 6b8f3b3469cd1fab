#pragma once

#include "core/book/house_book.h"
#include "core/book/progress.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

class QPainter;

namespace warmbench::ui {

/// One stay on the day line.
struct StayBar {
    StayId stay;
    QString label;    ///< short, on the bar
    QString sentence; ///< whole, for people and assistive programs
    Progress progress = Progress::Struck;
    Day from;
    Day to;                   ///< first day after
    bool beginsFixed = false; ///< what has begun can't begin on another day
    std::optional<Day> ready; ///< when its batch is expected to be ready
};

/// The bars of the stays of what is selected, in rows under the day line: one stands before the other where
/// they share days. A bar is moved by its middle and stretched by its ends; until it is let go only the band
/// knows.
class StayBand {
public:
    /// Where days lie.
    struct Frame {
        QRectF area; ///< of the band
        Day from;    ///< first day, at the left end
        int days = 1;

        [[nodiscard]] double left(Day day) const { return area.left() + (day - from) * area.width() / days; }
    };
    /// Days wanted for a stay.
    struct Days {
        StayId stay;
        Day from;
        Day to;
    };
    enum class Grip : std::uint8_t { Beginning, Whole, End };

    void setBars(std::vector<StayBar> bars);
    [[nodiscard]] const std::vector<StayBar>& bars() const { return m_bars; }
    [[nodiscard]] int height() const;

    void paint(QPainter& painter, const Frame& frame, const Palette& palette, const TypeSizes& type) const;

    /// What a pointer at a place would take hold of.
    [[nodiscard]] std::optional<Grip> gripAt(QPointF position, const Frame& frame) const;
    [[nodiscard]] const StayBar* barAt(QPointF position, const Frame& frame) const;
    /// Whether a bar was taken hold of.
    bool press(QPointF position, const Frame& frame);
    void drag(double x, const Frame& frame);

    /// Chooses the next bar or the one before, for the keys.
    void choose(int by);
    [[nodiscard]] const StayBar* chosen() const;
    void shift(Grip grip, int days);

    /// The days as they are held, where they are not those of the book; what is held is let go.
    std::optional<Days> letGo();
    /// As they are in the book again.
    void putBack();
    [[nodiscard]] bool isHolding() const { return m_held.has_value(); }
    /// The days of a bar as it is shown.
    [[nodiscard]] Days daysOf(std::size_t bar) const;

private:
    [[nodiscard]] QRectF rectOf(std::size_t bar, const Frame& frame) const;
    [[nodiscard]] std::optional<std::size_t> indexAt(QPointF position, const Frame& frame) const;
    void hold(std::size_t bar);

    std::vector<StayBar> m_bars;
    std::vector<int> m_rows; ///< by bar
    int m_rowCount = 0;
    std::optional<std::size_t> m_chosen;
    std::optional<Days> m_held;
    std::optional<std::size_t> m_pressed;
    Grip m_grip = Grip::Whole;
    double m_pressedAt = 0;
};

} // namespace warmbench::ui
