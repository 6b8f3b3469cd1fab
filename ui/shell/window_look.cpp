#include "ui/form/labels.h"
#include "ui/language/language.h"
#include "ui/plan/plan_dialog.h"
#include "ui/shell/day_bar.h"
#include "ui/shell/house_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/start_page.h"
#include "ui/shell/style.h"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>

/// How the window looks, and what it remembers of that from one start to the next.
namespace warmbench::ui {
namespace {

bool desktopIsDark() {
    const QPalette palette = QApplication::palette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

constexpr int titleBar = 32; ///< pixels, about

QSettings settings() {
    return QSettings(QStringLiteral("Warmbench"), QStringLiteral("Warmbench"));
}

} // namespace

void MainWindow::restoreState() {
    const QSettings kept = settings();
    m_theme = static_cast<Theme>(std::clamp(kept.value(QStringLiteral("theme"), 0).toInt(), 0, 2));
    m_fahrenheit = kept.value(QStringLiteral("fahrenheit"), false).toBool();
    for (QAction* action : m_menus.languages->actions())
        action->setChecked(action->data().toString() == kept.value(Language::key).toString());
    // No larger than what the screen has room for beside its own bars.
    resize(QSize(1360, 860).boundedTo(screen()->availableSize() - QSize(0, titleBar)));
    restoreGeometry(kept.value(QStringLiteral("geometry")).toByteArray());
    m_house->restoreState(kept.value(QStringLiteral("columns")).toByteArray());
    const QString place = kept.value(QStringLiteral("place")).toString();
    for (int i = 0; i < m_places->count(); ++i)
        if (m_places->widget(i)->objectName() == place) showPlace(i);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    delete m_plan;
    if (m_drafts) m_drafts->flush();
    QSettings kept = settings();
    kept.setValue(QStringLiteral("theme"), static_cast<int>(m_theme));
    kept.setValue(QStringLiteral("fahrenheit"), m_fahrenheit);
    kept.setValue(QStringLiteral("geometry"), saveGeometry());
    kept.setValue(QStringLiteral("columns"), m_house->saveState());
    kept.setValue(QStringLiteral("place"), m_places->currentWidget()->objectName());
    if (m_past) showNow();
    event->accept();
}

void MainWindow::setTheme(Theme theme) {
    m_theme = theme;
    applyLook();
}

void MainWindow::setFahrenheit(bool on) {
    m_fahrenheit = on;
    applyLook();
    if (m_session) showBook();
}

void MainWindow::setLanguage(const QString& code) {
    QSettings kept = settings();
    if (kept.value(Language::key).toString() == code) return;
    kept.setValue(Language::key, code);
    // The menu is still at work here, and the window goes: that comes after it.
    QMetaObject::invokeMethod(this, &MainWindow::languageChosen, Qt::QueuedConnection);
}

void MainWindow::applyLook() {
    const bool dark = m_theme == Theme::Dark || (m_theme == Theme::System && desktopIsDark());
    m_palette = dark ? &darkPalette() : &lightPalette();
    m_wording = Wording(QLocale(), m_fahrenheit);
    TroubleLabel::useFahrenheit(m_fahrenheit);
    QAction* const themes[] = {m_menus.systemTheme, m_menus.lightTheme, m_menus.darkTheme};
    themes[static_cast<std::size_t>(m_theme)]->setChecked(true);
    const QSignalBlocker quiet(m_menus.fahrenheit);
    m_menus.fahrenheit->setChecked(m_fahrenheit);
    setPalette(qtPalette(*m_palette));
    setStyleSheet(windowStyleSheet(*m_palette));
    setFont(m_type.body);
    m_house->setLook(*m_palette, m_type, m_wording);
    m_dayBar->setLook(*m_palette, m_type, m_wording);
    m_start->setType(m_type);
    for (Place* place : m_listed) place->setLook(*m_palette, m_type, m_wording);
    refreshPlace();
}

} // namespace warmbench::ui
