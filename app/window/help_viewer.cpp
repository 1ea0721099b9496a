// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/help_viewer.h"

#include <QFile>
#include <QLocale>
#include <QTextBrowser>
#include <QToolBar>
#include <QVBoxLayout>

#include "app/settings/icons.h"
#include "app/window/action_table.h"

namespace howlmap::app {

HelpViewer::HelpViewer(QWidget* parent) : QWidget(parent, Qt::Window), browser_(new QTextBrowser) {
    setWindowTitle(tr("Help"));
    resize(620, 720);
    auto* bar = new QToolBar;
    bar->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    const auto add = [&](const QString& text, const QString& picture, const QKeySequence& keys, const QString& sentence,
                         auto slot) {
        QAction* action = bar->addAction(icon(picture), text, browser_, slot);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WindowShortcut);
        explain(action, sentence);
        return action;
    };
    QAction* back = add(tr("Back"), QStringLiteral("previous"), QKeySequence::Back, tr("Goes to the page before."),
                        &QTextBrowser::backward);
    QAction* on = add(tr("Forward"), QStringLiteral("next"), QKeySequence::Forward, tr("Goes on to the page after."),
                      &QTextBrowser::forward);
    back->setEnabled(false);
    on->setEnabled(false);
    connect(browser_, &QTextBrowser::backwardAvailable, back, &QAction::setEnabled);
    connect(browser_, &QTextBrowser::forwardAvailable, on, &QAction::setEnabled);
    browser_->setAccessibleName(tr("Help page"));
    browser_->setFrameShape(QFrame::NoFrame);
    browser_->document()->setDocumentMargin(16);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(bar);
    column->addWidget(browser_);
}

QString HelpViewer::address(const QString& page) {
    const QString file = page.section(u'#', 0, 0), anchor = page.section(u'#', 1);
    for (const QString& language : {QLocale().name().left(2), QStringLiteral("en")}) {
        const QString path = QStringLiteral("/help/%1/%2.html").arg(language, file);
        if (QFile::exists(u':' + path))
            return QStringLiteral("qrc:") + path + (anchor.isEmpty() ? QString() : u'#' + anchor);
    }
    return {};
}

void HelpViewer::open(const QString& page) {
    const QString found = address(page);
    browser_->setSource(QUrl(found.isEmpty() ? address(QStringLiteral("index")) : found));
    show();
    raise();
    activateWindow();
}

}  // namespace howlmap::app
