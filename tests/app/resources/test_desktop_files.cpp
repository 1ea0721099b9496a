// SPDX-License-Identifier: GPL-3.0-or-later
// The files for the desktop pass the validators of their standards, and the manual page knows every verb and option.
#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "app/command_line/verbs.h"
#include "tests/support/registry.h"

namespace {

QString desktop(const char* file) {
    return QStringLiteral(HOWLMAP_SOURCE_DIR "/resources/desktop/") + QLatin1String(file);
}

/// What a validator says, both channels; its exit status is appended.
QString said_by(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    if (!process.waitForFinished(60000)) return QStringLiteral("%1 did not run").arg(program);
    return QString::fromUtf8(process.readAll()) + QString::number(process.exitCode());
}

QString manual() {
    QFile file(desktop("howlmap.1"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

}  // namespace

class DesktopFilesTest : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void desktop_entry() {
        QCOMPARE(said_by(QStringLiteral("desktop-file-validate"), {desktop("org.howlmap.Howlmap.desktop")}),
                 QStringLiteral("0"));
    }

    void software_centre_data() {
        const QString said = said_by(QStringLiteral("appstreamcli"),
                                     {QStringLiteral("validate"), QStringLiteral("--no-net"),
                                      QStringLiteral("--no-color"), desktop("org.howlmap.Howlmap.metainfo.xml")});
        QVERIFY2(said.endsWith(u"0"), qPrintable(said));
    }

    void manual_page_is_clean() {
        QCOMPARE(said_by(QStringLiteral("mandoc"), {QStringLiteral("-Tlint"), desktop("howlmap.1")}),
                 QStringLiteral("0"));
    }

    void file_type_is_known() {
        QTemporaryDir data;
        QVERIFY(QDir(data.path()).mkpath(QStringLiteral("packages")));
        QVERIFY(QFile::copy(desktop("org.howlmap.Howlmap.xml"), data.filePath(QStringLiteral("packages/howlmap.xml"))));
        said_by(QStringLiteral("update-mime-database"), {data.path()});
        QFile globs(data.filePath(QStringLiteral("globs2")));
        QVERIFY(globs.open(QIODevice::ReadOnly));
        QVERIFY(globs.readAll().contains("application/vnd.howlmap.show+json:*.howlmap"));
    }

    void manual_knows_every_verb_and_option() {
        const QString text = manual();
        for (const howlmap::app::Verb& verb : howlmap::app::verbs()) {
            QVERIFY2(text.contains(QStringLiteral(".It Cm %1").arg(QLatin1String(verb.name))), verb.name);
            QCommandLineParser parser;
            if (verb.describe) verb.describe(parser);
            const QRegularExpression option(QStringLiteral("\\s--([a-z][a-z-]*)"));
            for (auto it = option.globalMatch(parser.helpText()); it.hasNext();) {
                const QString name = it.next().captured(1);
                QVERIFY2(text.contains(QRegularExpression(QStringLiteral("^\\.It Fl .*-%1( |$)").arg(name),
                                                          QRegularExpression::MultilineOption)),
                         qPrintable(QLatin1String(verb.name) + QStringLiteral(" --") + name));
            }
        }
    }
};

HOWLMAP_TEST(DesktopFilesTest)
#include "test_desktop_files.moc"
