/** The steps by which one kind of device is told to trust a certificate. Makers move and rename them: each says what to look for. */
export interface DeviceSteps {
  readonly kind: string;
  /** told by what a browser says of itself */
  readonly sign: RegExp;
  readonly steps: readonly string[];
  readonly note?: string;
}

export const deviceSteps: readonly DeviceSteps[] = [
  {
    kind: "iPhone or iPad",
    sign: /iPhone|iPad/,
    steps: [
      "Open this page in Safari, load the certificate, and allow it.",
      "Open Settings. Near the top stands “Profile downloaded” (else under General › VPN & Device Management): open it and install it.",
      "Go to Settings › General › About › Certificate Trust Settings, at the very end, and switch it on. Without this second step it does not count.",
    ],
  },
  {
    kind: "Android phone or tablet",
    sign: /Android/,
    steps: [
      "Load the certificate.",
      "Open Settings and search there for “CA certificate” (mostly under Security › Encryption and credentials › Install a certificate).",
      "Choose “CA certificate”, agree to the warning, and choose the file kinrow-authority.crt among the downloads. The device wants its own lock for it.",
    ],
    note: "Firefox on Android looks at such certificates only after Settings › About Firefox, five taps on the logo, then Secret settings › Use third party CA certificates.",
  },
  {
    kind: "Windows",
    sign: /Windows/,
    steps: [
      "Load the certificate and open the file.",
      "Choose Install Certificate › Current User › Place all certificates in the following store.",
      "Browse to “Trusted Root Certification Authorities”, finish, and agree.",
      "Close the browser and open it again.",
    ],
  },
  {
    kind: "Mac",
    sign: /Macintosh|Mac OS X/,
    steps: [
      "Load the certificate and open the file: Keychain Access takes it into the keychain “login”.",
      "Find it there by its name, open it, unfold Trust, and set “When using this certificate” to Always Trust.",
      "Close the window; it asks for your password.",
    ],
    note: "Firefox has a list of its own: Settings › Privacy & Security › Certificates › View Certificates › Authorities › Import.",
  },
  {
    kind: "Linux",
    sign: /Linux|X11/,
    steps: [
      "Load the certificate.",
      "Chromium or Chrome: Settings › Privacy and security › Security › Manage certificates, then import it among the authorities and let it identify websites.",
      "Firefox: Settings › Privacy & Security › Certificates › View Certificates › Authorities › Import, and let it identify websites.",
    ],
  },
];

/** The kind of device that a browser says it is on; null where it does not say. */
export function deviceOf(agent: string | null): DeviceSteps | null {
  return deviceSteps.find((each) => each.sign.test(agent ?? "")) ?? null;
}
