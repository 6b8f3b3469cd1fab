#pragma once

#include "core/book/load.h"
#include "ui/dayline/stay_band.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QTimer>
#include <QWidget>

#include <functional>

namespace warmbench::ui {

/// A line of days with a handle that is the day looked at: over it the slots taken, by the heat of their
/// mats, and the days on which cuttings are struck. It shows eighteen weeks and moves on when the handle
/// nears an end.
///
/// Under it are the bars of the stays of what is selected, to be moved and stretched with the mouse.
///
/// Keys: Left and Right a day, PgUp and PgDn a week back and on, Home today, Space plays and stops. Down and
/// Up choose a bar; then Shift and Left, Right move its beginning, Ctrl its end, both together all of it by a
/// day; Enter does it, Escape leaves it as it was.
class DayLine : public QWidget {
    Q_OBJECT
public:
    /// Gives the load of the days from <= day < to.
    using Source = std::function<SlotLoad(Day from, Day to)>;

    explicit DayLine(Day today, QWidget* parent = nullptr);

    /// Palette, type and wording must outlive the widget or be set anew.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void setSource(Source source);
    /// Asks the source again, after a change of the book.
    void refresh();

    [[nodiscard]] Day day() const { return m_day; }
    [[nodiscard]] Day today() const { return m_today; }
    void setDay(Day day);
    /// The stays whose bars are shown.
    void setStays(std::vector<StayBar> bars);
    [[nodiscard]] const StayBand& stays() const { return m_band; }
    [[nodiscard]] StayBand::Frame bandFrame() const;
    /// First day shown, and the first after the last.
    [[nodiscard]] Day firstDay() const { return m_from; }
    [[nodiscard]] Day endDay() const;
    [[nodiscard]] bool isPlaying() const { return m_play.isActive(); }
    /// Moves on by a day every third of a second, until stopped.
    void play(bool on);
    [[nodiscard]] const SlotLoad& load() const { return m_load; }
    /// The fullest of the days shown; nothing where no slot is taken on any.
    [[nodiscard]] std::optional<Day> fullest() const;
    /// `Thursday 4 February 2027, 371 of 516 slots taken`.
    [[nodiscard]] QString sentence() const;

    [[nodiscard]] QSize sizeHint() const override { return {600, 122}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {300, 106}; }
    /// Where a day lies, in pixels from the left; its middle.
    [[nodiscard]] double xOf(Day day) const;
    [[nodiscard]] Day dayAt(double x) const;

Q_SIGNALS:
    void dayChanged(warmbench::Day day);
    void playingChanged(bool playing);
    /// A stay is to have other days.
    void stayDaysWanted(warmbench::StayId stay, warmbench::Day from, warmbench::Day to);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    static constexpr int daysShown = 7 * 18;

    void showDaysRound(Day day);
    bool bandKey(const QKeyEvent& event);
    void letBarGo();
    [[nodiscard]] QRectF chart() const;
    void paintLoad(QPainter& painter, const QRectF& chart) const;
    void paintStrikes(QPainter& painter, const QRectF& chart) const;
    void paintTicks(QPainter& painter, const QRectF& chart) const;
    void paintHandle(QPainter& painter, const QRectF& chart) const;
    void paintRooted(QPainter& painter, const QRectF& chart) const;
    void paintWords(QPainter& painter, const QRectF& chart) const;
    [[nodiscard]] std::vector<QRectF> marks(const QRectF& chart) const;
    /// Where all usable slots are taken.
    [[nodiscard]] double limitY(const QRectF& chart) const;

    const Palette* m_palette;
    const TypeSizes* m_type = nullptr;
    const Wording* m_wording = nullptr;
    Source m_source;
    SlotLoad m_load;
    Day m_today;
    Day m_day;
    Day m_from; ///< first day shown
    QTimer m_play;
    StayBand m_band;
    bool m_draggingBar = false;
};

} // namespace warmbench::ui
