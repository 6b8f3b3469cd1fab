#include "ui/shell/style.h"

namespace warmbench::ui {

QPalette qtPalette(const Palette& palette) {
    QPalette qt;
    qt.setColor(QPalette::Window, palette.paper);
    qt.setColor(QPalette::WindowText, palette.ink);
    qt.setColor(QPalette::Base, palette.panel);
    qt.setColor(QPalette::AlternateBase, palette.paper);
    qt.setColor(QPalette::Text, palette.ink);
    qt.setColor(QPalette::Button, palette.panel);
    qt.setColor(QPalette::ButtonText, palette.ink);
    qt.setColor(QPalette::ToolTipBase, palette.panel);
    qt.setColor(QPalette::ToolTipText, palette.ink);
    qt.setColor(QPalette::PlaceholderText, palette.quietInk);
    qt.setColor(QPalette::Highlight, palette.accent);
    qt.setColor(QPalette::HighlightedText, palette.textOn(palette.accent));
    qt.setColor(QPalette::Link, palette.accent);
    qt.setColor(QPalette::Mid, palette.rule);
    qt.setColor(QPalette::Disabled, QPalette::Text, palette.benchEdge);
    qt.setColor(QPalette::Disabled, QPalette::WindowText, palette.benchEdge);
    qt.setColor(QPalette::Disabled, QPalette::ButtonText, palette.benchEdge);
    return qt;
}

QString windowStyleSheet(const Palette& palette) {
    QString sheet = QStringLiteral(R"(
QWidget { background: @paper; color: @ink; }
QLabel, QCheckBox { background: transparent; }
QMenuBar { background: @panel; border-bottom: 1px solid @rule; padding: 2px 8px; }
QMenuBar::item { background: transparent; padding: 5px 10px; border-radius: 4px; }
QMenuBar::item:selected { background: @accentGround; }
QMenu { background: @panel; border: 1px solid @rule; padding: 4px; }
QMenu::item { background: transparent; padding: 5px 24px; border-radius: 4px; }
QMenu::item:selected { background: @accentGround; }
QMenu::item:disabled { color: @benchEdge; }
QMenu::separator { height: 1px; background: @rule; margin: 4px 8px; }
QComboBox QAbstractItemView, QCompleter QAbstractItemView { border: 1px solid @rule; }
QToolTip { background: @panel; color: @ink; border: 1px solid @rule; padding: 4px; }
QStatusBar { border-top: 1px solid @rule; color: @quietInk; }
QStatusBar::item { border: none; }
QWidget#sidePanel, QWidget#dayBar, QWidget#places { background: @panel; }
QWidget#places { border-bottom: 1px solid @rule; }
QWidget#dayBar { border-top: 1px solid @rule; }
QLabel#proposedWords { background: @accentGround; border-bottom: 3px dashed @accentColour; padding: 6px 16px; }
QLabel#backupTrouble { color: @ink; background: @panel; border-bottom: 1px solid @rule; border-radius: 0; padding: 6px 16px; }
QFrame#draftBar { background: @accentGround; border: none; border-bottom: 1px solid @accentColour; }
QFrame#pastBar { background: @accentGround; border: none; border-bottom: 3px solid @accentColour; }
QLabel[rank="quiet"] { color: @quietInk; }
QLabel[rank="trouble"] { color: @troubleColour; background: @troubleGround; border-radius: 4px; padding: 4px 8px; }
QFrame#factRule { background: @rule; border: none; }
QPushButton { background: @panel; border: 1px solid @rule; border-radius: 5px; padding: 3px 12px; min-height: 20px; }
QPushButton:hover { background: @accentGround; }
QPushButton:focus { border: 2px solid @accentColour; padding: 2px 11px; }
QPushButton:disabled { color: @benchEdge; background: transparent; }
QTreeView { background: @panel; border: 1px solid @rule; selection-background-color: @accentGround; selection-color: @ink; }
QTreeView:focus { border: 2px solid @accentColour; }
QTreeView::item { padding: 4px 0; }
QHeaderView::section { background: @panel; color: @quietInk; border: none; border-bottom: 1px solid @rule; padding: 5px 8px; }
QProgressBar { background: @rule; border: none; border-radius: 4px; }
QProgressBar::chunk { background: @accentColour; border-radius: 4px; }
QPushButton[primary="true"] { background: @accentColour; color: @onAccent; border-color: @accentColour; }
QPushButton[primary="true"]:disabled { background: transparent; color: @benchEdge; border-color: @rule; }
QPushButton[primary="true"]:focus { border-color: @ink; }
QPushButton[place="true"] { border: none; border-radius: 0; background: transparent; color: @quietInk; padding: 7px 12px 5px 12px; border-bottom: 3px solid transparent; }
QPushButton[place="true"]:checked { color: @ink; border-bottom: 3px solid @accentColour; }
QPushButton[place="true"]:focus { background: @accentGround; }
QLineEdit { selection-background-color: @accentColour; selection-color: @onAccent; border: 1px solid @fieldEdge; border-radius: 5px; padding: 3px 8px; }
QPlainTextEdit { background: @panel; border: 1px solid @fieldEdge; border-radius: 5px; padding: 2px 4px; selection-background-color: @accentColour; selection-color: @onAccent; }
QPlainTextEdit:focus { border: 2px solid @accentColour; padding: 1px 3px; }
QLineEdit:disabled, QPlainTextEdit:disabled { color: @benchEdge; border-color: @rule; background: transparent; }
QSpinBox:disabled, QDoubleSpinBox:disabled, QComboBox:disabled, QDateEdit:disabled, QCheckBox:disabled { color: @benchEdge; }
QLineEdit:focus { border: 2px solid @accentColour; padding: 2px 7px; }
QListView, QTextBrowser, QScrollArea { background: @panel; border: none; }
QListView { selection-background-color: @accentGround; selection-color: @ink; }
QListView:focus, QTextBrowser:focus, QScrollArea:focus { border: 2px solid @accentColour; }
QSplitter::handle { background: @rule; }
QScrollBar { background: transparent; border: none; }
QScrollBar:vertical { width: 12px; }
QScrollBar:horizontal { height: 12px; }
QScrollBar::handle { background: @rule; border-radius: 4px; margin: 2px; }
QScrollBar::handle:hover { background: @benchEdge; }
QScrollBar::handle:vertical { min-height: 28px; }
QScrollBar::handle:horizontal { min-width: 28px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
)");
    const std::initializer_list<std::pair<const char*, QColor>> colours{
        {"@troubleGround", palette.troubleGround},
        {"@troubleColour", palette.trouble},
        {"@accentGround", palette.accentGround},
        {"@accentColour", palette.accent},
        {"@onAccent", palette.textOn(palette.accent)},
        {"@quietInk", palette.quietInk},
        {"@fieldEdge", mix(palette.panel, palette.ink, 0.6)},
        {"@benchEdge", palette.benchEdge},
        {"@paper", palette.paper},
        {"@panel", palette.panel},
        {"@rule", palette.rule},
        {"@ink", palette.ink}};
    for (const auto& [name, colour] : colours) sheet.replace(QLatin1String(name), colour.name());
    return sheet;
}

} // namespace warmbench::ui
