// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/soak/monkey.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QMouseEvent>
#include <QPointer>
#include <QTest>
#include <algorithm>
#include <utility>

#include "app/window/file_actions.h"

namespace howlmap::app {
namespace {
constexpr auto kExample = ":/examples/folk-band-six.howlmap";
constexpr int kAnswerMs = 100;
constexpr long kEventsOfOneShow = 2000;

/// By events alone: a drag between widgets has a loop of its own that no test can leave.
void send_mouse(const QPointer<QWidget>& to, QEvent::Type type, QPoint at, Qt::MouseButton button,
                Qt::MouseButtons held) {
    if (!to) return;
    QMouseEvent event(type, at, to->mapToGlobal(at), button, held, Qt::NoModifier);
    QApplication::sendEvent(to, &event);
}
}  // namespace

Monkey::Monkey(MainWindow& window, QString file, unsigned seed)
    : window_(window), file_(std::move(file)), random_(seed) {
    window_.files().names = {[](QWidget*, const QString&) { return QString(); },
                             [this](QWidget*, const QString&) { return file_; }};
    // Whatever asks is answered by Esc, from inside its own loop.
    QObject::connect(&answers_, &QTimer::timeout, [] {
        if (auto* popup = QApplication::activePopupWidget()) popup->close();
        if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) dialog->reject();
    });
    answers_.start(kAnswerMs);
}

void Monkey::act() {
    ++events_;
    if (!window_.isVisible()) window_.show();
    if (events_ % kEventsOfOneShow == 1 || window_.document().show().inputs.empty()) return start_over();
    const int choice = whole(0, 99);
    if (choice < 15) return trigger();
    if (choice < 40) return press_keys();
    const auto widgets = visible_widgets();
    if (widgets.empty()) return;
    QWidget* widget = widgets[static_cast<std::size_t>(whole(0, static_cast<int>(widgets.size()) - 1))];
    choice < 75 ? click(widget) : drag(widget);
}

void Monkey::start_over() {
    window_.document().set_clean();
    window_.files().open_example(QString::fromLatin1(kExample));
    window_.document().edit(QStringLiteral("Fewer draws"), [](Show& show) { show.tolerance.draws = 20; });
}

QPoint Monkey::somewhere(const QWidget* widget) {
    return {whole(0, std::max(0, widget->width() - 1)), whole(0, std::max(0, widget->height() - 1))};
}

std::vector<QWidget*> Monkey::visible_widgets() const {
    std::vector<QWidget*> found;
    for (QWidget* widget : window_.findChildren<QWidget*>())
        if (widget->isVisible() && widget->isEnabled() && widget->width() > 0) found.push_back(widget);
    return found;
}

void Monkey::trigger() {
    const auto actions = window_.actions();
    if (actions.isEmpty()) return;
    QAction* action = actions[whole(0, static_cast<int>(actions.size()) - 1)];
    if (action->objectName() != QStringLiteral("file.quit")) action->trigger();
}

void Monkey::press_keys() {
    static const std::vector<Qt::Key> keys{Qt::Key_Tab,   Qt::Key_Left,   Qt::Key_Right,  Qt::Key_Up,     Qt::Key_Down,
                                           Qt::Key_Space, Qt::Key_Return, Qt::Key_Escape, Qt::Key_Delete, Qt::Key_1,
                                           Qt::Key_Minus, Qt::Key_A,      Qt::Key_Period, Qt::Key_PageUp, Qt::Key_F2};
    QWidget* target = window_.focusWidget() ? window_.focusWidget() : &window_;
    const Qt::KeyboardModifiers with = whole(0, 4) == 0 ? Qt::ShiftModifier : Qt::NoModifier;
    QTest::keyClick(target, keys[static_cast<std::size_t>(whole(0, static_cast<int>(keys.size()) - 1))], with);
}

void Monkey::click(QWidget* widget) {
    const QPointer<QWidget> still = widget;
    const QPoint at = somewhere(widget);
    QTest::mousePress(widget, Qt::LeftButton, {}, at);
    if (still) QTest::mouseRelease(still, Qt::LeftButton, {}, at);
    if (still && whole(0, 5) == 0) QTest::mouseDClick(still, Qt::LeftButton, {}, at);
}

void Monkey::drag(QWidget* widget) {
    if (!widget->parentWidget() || !widget->parentWidget()->inherits("QGraphicsView")) return click(widget);
    const QPointer<QWidget> still = widget;
    const QPoint from = somewhere(widget), to = somewhere(widget);
    send_mouse(still, QEvent::MouseButtonPress, from, Qt::LeftButton, Qt::LeftButton);
    for (int i = 1; i <= 5; ++i)
        send_mouse(still, QEvent::MouseMove, from + (to - from) * i / 5, Qt::NoButton, Qt::LeftButton);
    send_mouse(still, QEvent::MouseButtonRelease, to, Qt::LeftButton, Qt::NoButton);
}

}  // namespace howlmap::app
